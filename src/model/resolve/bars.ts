import type { Bar, DrilledHole, Triple } from "../frame.ts";
import type { Bar as BarFile } from "../generated/frame-file.generated.ts";
import { ref } from "../ref.ts";
import { si } from "../units/quantity.ts";
import { checkSpec, resolveEnd } from "./ends.ts";
import { criteria, direction, doubt, face, notNegative, point, positive, quantity } from "./values.ts";
import { cross, lengthOf, minus, unit } from "./vectors.ts";
import { asWritten, name, refuse, stockPart, type Work } from "./work.ts";

/** Shorter bars are drawn by one point: no saw cuts a micrometre. */
const SHORTEST = 1e-6; // m
/** A direction within this of the bar's own says nothing about how its section stands. */
const ALONG = Math.sin((1 * Math.PI) / 180);

const NO_HOLES: readonly DrilledHole[] = Object.freeze([]);

function holesOf(work: Work, raw: BarFile, pointer: string): readonly DrilledHole[] {
  if (raw.holes === undefined) return NO_HOLES;
  const holes: DrilledHole[] = [];
  for (const [index, hole] of raw.holes.entries()) {
    const at = notNegative(work, hole.at, "length", `${pointer}/holes/${index}/at`);
    const diameter = positive(work, hole.diameter, "length", `${pointer}/holes/${index}/diameter`);
    if (at === undefined || diameter === undefined) continue;
    holes.push(Object.freeze({ at, on: face(hole.on), diameter, through: hole.through ?? true }));
  }
  return Object.freeze(holes);
}

const LEVEL: Bar["stance"] = Object.freeze({ by: "roll", angle: 0 });

function stanceOf(work: Work, raw: BarFile, along: Triple | undefined, pointer: string): Bar["stance"] {
  if (raw.tall !== undefined && raw.roll !== undefined) {
    const words = { found: "tall and roll of one bar", expected: "one of them", mend: "leave out roll" };
    refuse(work, "two-stances", `${pointer}/roll`, words, true);
  }
  if (raw.tall !== undefined) {
    const tall = direction(work, raw.tall, `${pointer}/tall`);
    if (tall === undefined) return LEVEL;
    if (along !== undefined && lengthOf(cross(tall, along)) < ALONG) {
      const words = {
        found: `"tall": ${asWritten(raw.tall)}, along the bar`,
        expected: "a direction across the bar",
      };
      refuse(work, "tall-along-bar", `${pointer}/tall`, words);
    }
    return Object.freeze({ by: "tall", direction: tall });
  }
  if (raw.roll === undefined) return LEVEL;
  const angle = quantity(work, raw.roll, "angle", `${pointer}/roll`);
  return Object.freeze({ by: "roll", angle: angle ?? 0 });
}

/** The direction of a bar between its points, or undefined with a complaint when it has none. */
function alongOf(work: Work, raw: BarFile, from: Triple, to: Triple, pointer: string): Triple | undefined {
  const length = lengthOf(minus(to, from));
  if (length >= SHORTEST) {
    doubt(work, si(length, "length"), "bar length", pointer);
    return unit(minus(to, from));
  }
  const found = `from and to both ${asWritten(raw.to)}`;
  refuse(work, "zero-length", `${pointer}/to`, { found, expected: "two points apart" });
  return undefined;
}

function resolveBar(work: Work, raw: BarFile, pointer: string): Bar | undefined {
  const profile = stockPart(work, work.stock.profiles, "profile", raw.profile, `${pointer}/profile`);
  const from = point(work, raw.from, `${pointer}/from`);
  const to = point(work, raw.to, `${pointer}/to`);
  const along = from === undefined || to === undefined ? undefined : alongOf(work, raw, from, to, pointer);
  for (const which of ["from", "to", "both"] as const) {
    const spec = raw.ends?.[which];
    if (spec !== undefined) checkSpec(work, spec, `${pointer}/ends/${which}`);
  }
  const stance = stanceOf(work, raw, along, pointer);
  const ends = Object.freeze({
    from: resolveEnd(work, raw, "from", pointer),
    to: resolveEnd(work, raw, "to", pointer),
  });
  const holes = holesOf(work, raw, pointer);
  if (profile === undefined || from === undefined || to === undefined || along === undefined) return undefined;
  return Object.freeze({
    ref: Object.freeze(ref("bar", raw.id)),
    profile,
    from,
    to,
    stance,
    ends,
    holes,
    criteria: criteria(raw.criteria),
  });
}

/** Gives every drawn bar its id, before any part refers to one. */
export function nameBars(work: Work): void {
  for (const [index, raw] of work.file.bars.entries()) {
    const pointer = `/bars/${index}`;
    name(work, raw.id, { kind: "bar", pointer }, `${pointer}/id`);
  }
}

/** The drawn bars that could be resolved, in the order of the file. */
export function resolveBars(work: Work): Bar[] {
  const bars: Bar[] = [];
  for (const [index, raw] of work.file.bars.entries()) {
    const bar = resolveBar(work, raw, `/bars/${index}`);
    if (bar !== undefined) bars.push(bar);
  }
  return bars;
}
