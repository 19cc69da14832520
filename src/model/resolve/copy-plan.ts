import type { Copy } from "../generated/frame-file.generated.ts";
import type { Kind } from "../ref.ts";
import { type CopyStep, type Instance, MOST_PARTS, renamed } from "./copies.ts";
import { mirrorAcross, type Placement, shiftBy, turnAbout } from "./placement.ts";
import { direction, point, quantity, triple } from "./values.ts";
import { name, refersTo, refuse, type Work } from "./work.ts";

const COPIED: readonly Kind[] = ["bar", "panel", "mass", "door", "group", "zone"];
const WAYS = ["shift", "mirror", "turn"] as const;

/** How the nth copy lies; undefined with a complaint when the entry does not say it well. */
function placementsOf(work: Work, raw: Copy, pointer: string): ((nth: number) => Placement) | undefined {
  if (raw.shift !== undefined) {
    const by = point(work, raw.shift, `${pointer}/shift`);
    if (by?.every((value) => value === 0)) {
      refuse(work, "copy-in-place", `${pointer}/shift`, {
        found: "a shift of nothing",
        expected: "a shift away from the original",
      });
      return undefined;
    }
    return by && ((nth) => shiftBy(triple(by[0] * nth, by[1] * nth, by[2] * nth)));
  }
  if (raw.mirror !== undefined) {
    const at = quantity(work, raw.mirror.at, "length", `${pointer}/mirror/at`, "coordinate");
    const axis = ["x", "y", "z"].indexOf(raw.mirror.across);
    return at === undefined ? undefined : () => mirrorAcross(axis, at);
  }
  const turn = raw.turn;
  if (turn === undefined) return undefined;
  const about = direction(work, turn.about, `${pointer}/turn/about`);
  const through = point(work, turn.through, `${pointer}/turn/through`);
  const angle = quantity(work, turn.angle, "angle", `${pointer}/turn/angle`);
  if (angle === 0) {
    refuse(work, "copy-in-place", `${pointer}/turn/angle`, {
      found: "a turn by 0°",
      expected: "a turn away from the original",
    });
    return undefined;
  }
  if (about === undefined || through === undefined || angle === undefined) return undefined;
  return (nth) => turnAbout(about, through, angle * nth);
}

function wayChosen(work: Work, raw: Copy, pointer: string): boolean {
  const [first, second] = WAYS.filter((way) => raw[way] !== undefined);
  const expected = "exactly one of shift, mirror, turn";
  if (first === undefined) refuse(work, "copy-without-way", pointer, { found: "a copy that is not moved", expected });
  else if (second !== undefined) {
    const words = { found: `${first} and ${second} of one copy`, expected, mend: "write two entries" };
    refuse(work, "two-ways", `${pointer}/${second}`, words, true);
  } else if (first === "mirror" && raw.times !== undefined && raw.times > 1) {
    const words = {
      found: `${raw.times} times with mirror`,
      expected: "times only with shift or turn",
      mend: "leave out times",
    };
    refuse(work, "mirror-times", `${pointer}/times`, words, true);
  } else return true;
  return false;
}

/** What each panel, mass, door and group needs of other parts, by id, each once: it is copied with all of them. */
type Needs = Map<string, readonly string[]>;

function needsOf({ file, names }: Work): Needs {
  const needs: Needs = new Map();
  const need = (id: string, parts: readonly string[]): void => {
    needs.set(id, [...new Set(parts)]);
  };
  for (const { id, edges = [], bars = [] } of file.panels ?? []) {
    need(id, [...edges.flatMap((edge) => (edge === "free" ? [] : [edge.bar])), ...bars]);
  }
  for (const { id, on } of file.masses ?? []) need(id, on);
  for (const { id, bars, panels = [] } of file.doors ?? []) need(id, [...bars, ...panels]);
  // Stands have no names yet; they go with their bars.
  for (const { id, parts } of file.groups ?? []) {
    need(
      id,
      parts.filter((part) => names.has(part)),
    );
  }
  return needs;
}

type Dependents = Map<string, string[]>;

function depend(dependents: Dependents, id: string, on: readonly string[]): void {
  for (const one of on) {
    const list = dependents.get(one);
    if (list === undefined) dependents.set(one, [id]);
    else list.push(id);
  }
}

/** The parts named, what doors and groups among them hold, and everything that needs only such parts. */
function closure(named: readonly string[], work: Work, needs: Needs, dependents: Dependents): ReadonlySet<string> {
  const ids = new Set(named);
  const missing = new Map<string, number>();
  // A set that grows while it is walked is walked to its end.
  for (const id of ids) {
    const kind = work.names.get(id)?.kind;
    if (kind === "door" || kind === "group") for (const held of needs.get(id) ?? []) ids.add(held);
    for (const other of dependents.get(id) ?? []) {
      const left = (missing.get(other) ?? needs.get(other)?.length ?? 0) - 1;
      missing.set(other, left);
      if (left === 0) ids.add(other);
    }
  }
  return ids;
}

/** Names what the instances make, so that any part of the file can refer to it. */
function nameCopies(work: Work, step: CopyStep, needs: Needs, dependents: Dependents): void {
  for (const instance of step.instances) {
    for (const id of step.ids) {
      const original = work.names.get(id);
      if (original === undefined) continue;
      const copy = id + instance.suffix;
      const named = { kind: original.kind, pointer: original.pointer, copyPointer: instance.pointer };
      name(work, copy, named, `${instance.pointer}/suffix`);
      const on = needs.get(id);
      if (on === undefined || needs.has(copy)) continue;
      const own = on.map((one) => renamed(instance, one));
      needs.set(copy, own);
      depend(dependents, copy, own);
    }
  }
}

function planned(work: Work, raw: Copy, pointer: string, needs: Needs, dependents: Dependents): CopyStep | undefined {
  const placed = wayChosen(work, raw, pointer) ? placementsOf(work, raw, pointer) : undefined;
  const named = raw.of.filter((id, index) => refersTo(work, id, COPIED, `${pointer}/of/${index}`));
  const ids = closure(named, work, needs, dependents);
  const times = raw.times ?? 1;
  if (work.names.size + ids.size * times > MOST_PARTS) {
    const found = `${ids.size} parts ${times} times`;
    refuse(work, "too-many-parts", pointer, { found, expected: `at most ${MOST_PARTS} parts in a frame` });
    return undefined;
  }
  if (placed === undefined) return undefined;
  const instances: Instance[] = [];
  for (let nth = 1; nth <= times; nth++) {
    const suffix = times > 1 ? `${raw.suffix}${nth}` : raw.suffix;
    instances.push({ pointer, suffix, placement: placed(nth), ids });
  }
  return { ids, instances };
}

/**
 * Reads `copies` in their order, once all drawn parts are named; later entries may copy what earlier ones made.
 * Names all bars, panels, masses, doors, groups and zones that come of them.
 */
export function planCopies(work: Work): readonly CopyStep[] {
  const copies = work.file.copies ?? [];
  if (copies.length === 0) return [];
  const needs = needsOf(work);
  const dependents: Dependents = new Map();
  for (const [id, on] of needs) depend(dependents, id, on);
  const steps: CopyStep[] = [];
  for (const [index, raw] of copies.entries()) {
    const pointer = `/copies/${index}`;
    const step = planned(work, raw, pointer, needs, dependents);
    if (step === undefined) continue;
    nameCopies(work, step, needs, dependents);
    steps.push(step);
  }
  // A frame that is too large is refused: then nothing is made only to be thrown away.
  return work.complaints.some(({ code }) => code === "too-many-parts") ? [] : steps;
}
