import type { Bar, FrameFile, Joint, KitItem, Load } from "../../src/model/generated/frame-file.generated.ts";

type EndName = "from" | "to";
type Axis = 0 | 1 | 2;

const MM_PER_INCH = 25.4;

/** A length of the drawing given in mm, in the unit of the file. */
export function mm(file: FrameFile, length: number): number {
  return file.units === "mm-N-kg" ? length : length / MM_PER_INCH;
}

export function bar(file: FrameFile, id: string): Bar {
  const found = file.bars.find((one) => one.id === id);
  if (!found) throw new Error(`${file.title} has no bar ${id}`);
  return found;
}

/** What a table by slot size holds for a bar's series. */
export function forSlot<T>(file: FrameFile, id: string, table: Readonly<Record<string, T>>): T {
  const [, size = ""] = /-([\d/]+)/.exec(bar(file, id).profile) ?? [];
  const found = table[size];
  if (found === undefined) throw new Error(`nothing listed for the slots of ${id}, "${size}"`);
  return found;
}

/** Coordinates of a drawn point as plain numbers. */
export function point(file: FrameFile, id: string, end: EndName): [number, number, number] {
  const drawn = bar(file, id)[end].map((value) => {
    if (typeof value !== "number") throw new Error(`${id}/${end} is not drawn in plain numbers`);
    return value;
  });
  return [drawn[0] ?? 0, drawn[1] ?? 0, drawn[2] ?? 0];
}

/** Moves one end of a bar. */
export function moveEnd(file: FrameFile, id: string, end: EndName, axis: Axis, by: number): void {
  const at = point(file, id, end);
  at[axis] += by;
  bar(file, id)[end] = at;
}

/** Puts a whole level or upright bar elsewhere along one axis. */
export function placeBar(file: FrameFile, id: string, axis: Axis, at: number): void {
  for (const end of ["from", "to"] as const) moveEnd(file, id, end, axis, at - point(file, id, end)[axis]);
}

/** Which axis a bar runs along. */
export function runsAlong(file: FrameFile, id: string): Axis {
  const [a, b] = [point(file, id, "from"), point(file, id, "to")];
  const axis = ([0, 1, 2] as const).find((i) => Math.abs(b[i] - a[i]) > mm(file, 1));
  if (axis === undefined) throw new Error(`${id} has no length`);
  return axis;
}

function endsOf(joint: Joint): readonly EndName[] {
  return joint.ends === undefined || joint.ends === "both" ? ["from", "to"] : [joint.ends];
}

const namesOf = (joint: Joint): readonly string[] =>
  joint.bars.flatMap((ref) => (ref.includes("/") ? [ref] : endsOf(joint).map((end) => `${ref}/${end}`)));

/** Connectors that hold one end of a bar, as a kit of its own. */
export function kitOf(file: FrameFile, id: string, end: EndName): KitItem[] {
  const joint = (file.joints ?? []).find((one) => namesOf(one).includes(`${id}/${end}`));
  if (!joint) throw new Error(`nothing fastens ${id}/${end}`);
  const items = typeof joint.by === "string" ? file.kits?.[joint.by] : joint.by;
  if (!items) throw new Error(`${file.title} has no kit ${String(joint.by)}`);
  return structuredClone(items);
}

/** Takes the ends named out of the joints; a joint of no end goes, and a kit that no joint uses. */
export function unfasten(file: FrameFile, ...ends: readonly string[]): void {
  const joints: Joint[] = [];
  for (const joint of file.joints ?? []) {
    const names = namesOf(joint);
    const left = names.filter((name) => !ends.includes(name));
    if (left.length === names.length) joints.push(joint);
    else if (left.length > 0) {
      const { ends: _, ...rest } = joint;
      joints.push({ ...rest, bars: left as Joint["bars"] });
    }
  }
  file.joints = joints;
  for (const kit of Object.keys(file.kits ?? {}))
    if (!joints.some((joint) => joint.by === kit)) delete file.kits?.[kit];
}

/** Fastens one end by other connectors than before. */
export function refasten(file: FrameFile, id: string, end: EndName, by: readonly KitItem[]): void {
  unfasten(file, `${id}/${end}`);
  file.joints?.push({ bars: [`${id}/${end}`], by: [...by] as Extract<Joint["by"], readonly unknown[]> });
}

/** Changes the first connector on one end of a bar. */
export function changeConnector(file: FrameFile, id: string, end: EndName, change: Partial<KitItem>): void {
  const [first, ...rest] = kitOf(file, id, end);
  if (!first) throw new Error(`${id}/${end} has no connector`);
  refasten(file, id, end, [{ ...first, ...change }, ...rest]);
}

/** Draws one end as its cut end, at a coordinate along the bar. */
export function drawCut(file: FrameFile, id: string, end: EndName, axis: Axis, at: number): void {
  const one = bar(file, id);
  one.ends = { ...one.ends, [end]: { ...one.ends?.[end], cut: "as-drawn" } };
  moveEnd(file, id, end, axis, at - point(file, id, end)[axis]);
}

export function addLoad(file: FrameFile, load: Load): void {
  file.loads = [...(file.loads ?? []), load] as NonNullable<FrameFile["loads"]>;
}
