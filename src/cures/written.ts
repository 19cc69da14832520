import type { Bar, FrameFile, Joint } from "../model/generated/frame-file.generated.ts";
import { formatNumber } from "../model/units/format-quantity.ts";
import type { Edit } from "./cure.ts";

/** Decimals of a coordinate that a cure writes: a tenth of a micrometre or of a ten-thousandth of an inch. */
const DECIMALS = 4;
const METRES_TO_FILE = { "mm-N-kg": 1000, "in-lbf-lb": 1 / 0.0254 } as const;

/** A length [m] as the file writes it. */
export function inFile(value: number, file: FrameFile): number {
  return Number(formatNumber(value * METRES_TO_FILE[file.units], DECIMALS));
}

/** A point [m] as the file writes it. */
export function pointInFile(point: readonly [number, number, number], file: FrameFile): [number, number, number] {
  return [inFile(point[0], file), inFile(point[1], file), inFile(point[2], file)];
}

/** A bar that the file itself writes (not a copy), with its number in the list. */
export function writtenBar(file: FrameFile, id: string): { readonly bar: Bar; readonly index: number } | undefined {
  const index = file.bars.findIndex((bar) => bar.id === id);
  const bar = file.bars[index];
  return bar && { bar, index };
}

/** An id that no part of the file has yet. */
export function freshId(file: FrameFile, wanted: string): string {
  const taken = new Set([...file.bars.map((bar) => bar.id), ...(file.panels ?? []).map((panel) => panel.id)]);
  let id = wanted;
  for (let n = 2; taken.has(id); n += 1) id = `${wanted}-${n}`;
  return id;
}

/** The joint entry that fastens an end, and the ends it fastens besides. */
export function jointOf(
  file: FrameFile,
  bar: string,
  end: "from" | "to",
): { readonly joint: Joint; readonly index: number } | undefined {
  const index = (file.joints ?? []).findIndex((joint) =>
    joint.bars.some(
      (written) =>
        written === `${bar}/${end}` || (written === bar && (joint.ends ?? "both") !== (end === "from" ? "to" : "from")),
    ),
  );
  const joint = file.joints?.[index];
  return joint && { joint, index };
}

/** Takes one end of a bar out of the joint entry that fastens it; the other end, if it was fastened too, stays. */
export function withoutEnd(file: FrameFile, bar: string, end: "from" | "to"): readonly Edit[] {
  const found = jointOf(file, bar, end);
  if (!found) return [];
  const { joint, index } = found;
  const others = joint.bars.filter((written) => written !== bar && written !== `${bar}/${end}`);
  const whole = joint.bars.includes(bar) && (joint.ends ?? "both") === "both";
  const bars = whole ? [...others, `${bar}/${end === "from" ? "to" : "from"}`] : others;
  return [{ pointer: `/joints/${index}`, to: bars.length === 0 ? undefined : { ...joint, bars } }];
}
