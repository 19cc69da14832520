import { bodies, cutPoint } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import { OFF_THE_END } from "../facts/slot-slides.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { Bar, Frame } from "../model/frame.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { freeHeight } from "./free-height.ts";
import { givingOf } from "./giving-most.ts";
import { type OuterPair, outerPairs, type PostPair, postPairs } from "./posts.ts";
import { endReach, flush, slantingBar, slantingKit, thickness, wayOut } from "./slanting-bar.ts";
import { freshId } from "./written.ts";

/** A brace steeper than this has little grip sideways, one flatter little on the post: 20° and 70° from level. */
const FLAT = Math.tan((20 * Math.PI) / 180);
const STEEP = Math.tan((70 * Math.PI) / 180);

/** The heights between which a nut in the outer slots of both posts keeps far enough from their cut ends, m. */
function nutsReach({ pair: { a, b } }: OuterPair, frame: Frame): readonly [low: number, high: number] {
  const all = factOf(bodies, frame);
  const spans = [a, b].map((bar) => {
    const body = all.get(bar.ref.id);
    const cut = body ? [cutPoint(body, "from")[2], cutPoint(body, "to")[2]] : [bar.from[2], bar.to[2]];
    const keep = OFF_THE_END * Math.max(...bar.profile.slots.map(({ opening }) => opening));
    return [Math.min(...cut) + keep, Math.max(...cut) - keep] as const;
  });
  return [Math.max(...spans.map(([low]) => low)), Math.min(...spans.map(([, high]) => high))];
}

interface Place {
  readonly foot: readonly [bar: Bar, at: Vec3];
  readonly head: readonly [bar: Bar, at: Vec3];
  readonly on: OuterPair["on"];
  /** Rise over run. */
  readonly slope: number;
}

/** From low on one post to high on the next, turning the same way round the frame on every side: no post gets two ends at one height. */
function placeOf(outer: OuterPair, frame: Frame): Place | undefined {
  const {
    pair: { a, b, axis },
    on,
  } = outer;
  const out = wayOut(on);
  const kit = slantingKit(frame, a, b);
  if (!kit || !flush(a, b, out)) return undefined;
  const ahead = axis === 0 ? -out[1] > 0 : out[0] > 0;
  const [foot, head] = ahead ? [a, b] : [b, a];
  const run = Math.abs(b.from[axis] - a.from[axis]);
  const ends = (pick: (...z: number[]) => number): readonly number[] =>
    [a, b].map(({ from, to }) => pick(from[2], to[2]));
  const free = freeHeight(outer, frame, thickness(kit), [Math.max(...ends(Math.min)), Math.min(...ends(Math.max))]);
  const nuts = nutsReach(outer, frame);
  const low = Math.max(free[0] + endReach(kit), nuts[0]);
  const high = Math.min(free[1] - endReach(kit), nuts[1], low + STEEP * run);
  const slope = (high - low) / run;
  if (!(slope > FLAT)) return undefined;
  return {
    foot: [foot, [foot.from[0], foot.from[1], low]],
    head: [head, [head.from[0], head.from[1], high]],
    on,
    slope,
  };
}

/** The bay of a side in which a brace lies nearest to 45°. */
function best(side: readonly OuterPair[], frame: Frame): Place | undefined {
  const off = ({ slope }: Place): number => Math.abs(Math.atan(slope) - Math.PI / 4);
  return side.flatMap((pair) => placeOf(pair, frame) ?? []).sort((p, q) => off(p) - off(q))[0];
}

/** One brace a side along an axis, the far side first. */
function placesAlong(all: readonly PostPair[], axis: 0 | 1, frame: Frame): readonly Place[] {
  const sides = new Map<string, OuterPair[]>();
  for (const outer of outerPairs(all, axis)) sides.set(outer.on, [...(sides.get(outer.on) ?? []), outer]);
  return [...sides.values()].flatMap((side) => best(side, frame) ?? []);
}

function proposal(places: readonly Place[], patient: Patient): Proposal | undefined {
  const { frame, file } = patient;
  const edits: Edit[] = [];
  const names = new Set<string>();
  for (const { foot, head, on } of places) {
    const kit = slantingKit(frame, foot[0], head[0]);
    const id = freshId(file, `brace-${foot[0].ref.id}-${head[0].ref.id}`);
    if (!kit || names.has(id)) continue;
    names.add(id);
    edits.push(...slantingBar(kit, foot, head, on, id, patient));
  }
  const [one] = places;
  const kit = one && slantingKit(frame, one.foot[0], one.head[0]);
  if (!one || !kit) return undefined;
  const where =
    places.length === 1
      ? `a slanting brace from low on ${one.foot[0].ref.id} to high on ${one.head[0].ref.id}`
      : `${places.length} slanting braces between the posts`;
  if (file.pivots === undefined) edits.unshift({ pointer: "/pivots", to: [] });
  return { words: `${where}, on their outer faces, held by ${kit.tie.name}`, edits };
}

/**
 * Slanting bars from low on one post to high on the next, on their outer faces, where they leave the bays to the rails. Least first:
 * one along the axis that gives most, one on both sides along it, the far side and both ends with the near side left free, all
 * sides; the first two not where the frame gives too far along both.
 */
export const diagonalBrace: Cure = {
  id: "diagonal-brace",
  turn: 2,
  mends: ["frame.sways", "frame.unbraced", "frame.buckles"],
  *propose(ailment, patient): Iterable<Proposal> {
    const { frame } = patient;
    const all = postPairs(frame);
    const { axes, bothWays } = givingOf(frame, ailment);
    const along = (axis: 0 | 1): readonly Place[] => placesAlong(all, axis, frame);
    const [first, second] = [along(axes[0]), along(axes[1])];
    const sets = [
      ...(bothWays ? [] : [first.slice(0, 1), first]),
      [...along(0).slice(0, 1), ...along(1)],
      [...first, ...second],
    ];
    const made = new Set<string>();
    for (const places of sets) {
      const one = places.length > 0 ? proposal(places, patient) : undefined;
      if (!one || made.has(one.words)) continue;
      made.add(one.words);
      yield one;
    }
  },
};
