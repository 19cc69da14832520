import type { Door } from "../frame.ts";
import type { Door as DoorFile } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import type { Connector } from "../stock/stock.ts";
import { quote } from "../text/quote.ts";
import { partOfKind } from "./fastenings.ts";
import { direction, pair, point, quantities } from "./values.ts";
import { asWritten, name, references, refuse, type Work } from "./work.ts";

type Fitting = Door["hinges"][number];
type FittingFile = DoorFile["hinges"][number];

const HINGES: readonly Connector["kind"][] = ["hinge", "pivot"];
/** A latch is whatever of stock holds a door bar to a fixed one. */
const LATCHES: readonly Connector["kind"][] = ["bracket", "plate", "side-tie", "pivot", "hinge"];

function fitting(
  work: Work,
  raw: FittingFile,
  kinds: readonly Connector["kind"][],
  doorBars: ReadonlySet<string>,
  pointer: string,
): Fitting | undefined {
  const part = partOfKind(work, raw.part, kinds, `${pointer}/part`);
  const at = point(work, raw.at, `${pointer}/at`);
  const [own, other] = references(work, raw.bars, ["bar"], `${pointer}/bars`);
  if (own === undefined || other === undefined) return undefined;
  if (!doorBars.has(own) || doorBars.has(other)) {
    const found = `"${quote(own)}" first and "${quote(other)}" second`;
    const mend = doorBars.has(other) && !doorBars.has(own) ? `write ["${quote(other)}", "${quote(own)}"]` : undefined;
    const expected = "a bar of the door first, then a bar that is not";
    refuse(work, "wrong-order", `${pointer}/bars`, { found, expected, ...(mend === undefined ? {} : { mend }) });
    return undefined;
  }
  if (part === undefined || at === undefined) return undefined;
  return Object.freeze({ part, bars: Object.freeze([own, other] as const), at });
}

function resolveDoor(work: Work, raw: DoorFile, pointer: string): Door | undefined {
  const bars = references(work, raw.bars, ["bar"], `${pointer}/bars`);
  const panels = references(work, raw.panels ?? [], ["panel"], `${pointer}/panels`);
  const axis = direction(work, raw.axis, `${pointer}/axis`);
  const doorBars = new Set(bars);
  const hinges = raw.hinges.map((hinge, index) => fitting(work, hinge, HINGES, doorBars, `${pointer}/hinges/${index}`));
  const latch = raw.latch === undefined ? undefined : fitting(work, raw.latch, LATCHES, doorBars, `${pointer}/latch`);
  const swing = pair(quantities(work, raw.swing, "angle", `${pointer}/swing`));
  if (swing !== undefined && swing[0] === swing[1]) {
    refuse(work, "door-does-not-swing", `${pointer}/swing`, {
      found: asWritten(raw.swing),
      expected: "two different angles",
    });
  }
  if (axis === undefined || swing === undefined) return undefined;
  return Object.freeze({
    ref: Object.freeze(ref("door", raw.id)),
    bars,
    panels,
    axis,
    hinges: Object.freeze(hinges.filter((hinge) => hinge !== undefined)),
    ...(latch === undefined ? {} : { latch }),
    swing,
  });
}

export function nameDoors(work: Work): void {
  for (const [index, raw] of (work.file.doors ?? []).entries()) {
    const pointer = `/doors/${index}`;
    name(work, raw.id, { kind: "door", pointer }, `${pointer}/id`);
  }
}

export function resolveDoors(work: Work): Door[] {
  const doors: Door[] = [];
  for (const [index, raw] of (work.file.doors ?? []).entries()) {
    const door = resolveDoor(work, raw, `/doors/${index}`);
    if (door !== undefined) doors.push(door);
  }
  return doors;
}
