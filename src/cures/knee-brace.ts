import { axesOf } from "../facts/axes.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { Bar, Frame } from "../model/frame.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { si } from "../model/units/quantity.ts";
import type { Cure, Edit, Patient, Proposal } from "./cure.ts";
import { givingOf } from "./giving-most.ts";
import { IN_LINE, type OuterPair, outerPairs, postPairs } from "./posts.ts";
import { flush, halfAcross, slantingBar, slantingKit, wayOut } from "./slanting-bar.ts";
import { freshId } from "./written.ts";

/** A knee takes one of these shares of the shorter of the bay's run and the posts' height; at 45°, so as much of both (common practice). */
const SHARES = [0.3, 0.4];
/** Cosine of what counts as running along an axis. */
const ALONG = 0.98;

/** A corner of post and rail, and where a knee across it is tied on the axes of both. */
interface Corner {
  readonly post: readonly [bar: Bar, at: Vec3];
  readonly rail: readonly [bar: Bar, at: Vec3];
  readonly on: OuterPair["on"];
  /** From the corner to either tie, m. */
  readonly leg: number;
}

/** The highest rail that runs from post to post in their plane, its outer face flush with theirs. */
function railOver({ pair: { a, b, axis }, on }: OuterPair, frame: Frame): Bar | undefined {
  const across = axis === 0 ? 1 : 0;
  const reaches = (rail: Bar): boolean => {
    const ends = [rail.from[axis], rail.to[axis]].sort((p, q) => p - q) as [number, number];
    const half = halfAcross(a, axis === 0 ? [1, 0, 0] : [0, 1, 0]);
    return ends[0] <= a.from[axis] + half + IN_LINE && ends[1] >= b.from[axis] - half - IN_LINE;
  };
  return frame.bars
    .filter(
      (bar) =>
        Math.abs(axesOf(bar).x[axis]) > ALONG &&
        Math.abs(bar.from[across] - a.from[across]) < IN_LINE &&
        flush(a, bar, wayOut(on)) &&
        reaches(bar),
    )
    .sort((p, q) => q.from[2] - p.from[2])[0];
}

/** The two upper corners of a bay, where both posts and the rail have faces in one plane. */
function cornersOf(outer: OuterPair, frame: Frame, share: number): readonly Corner[] {
  const {
    pair: { a, b, axis },
    on,
  } = outer;
  const rail = railOver(outer, frame);
  if (!rail || !flush(a, b, wayOut(on))) return [];
  const height = rail.from[2];
  const run = b.from[axis] - a.from[axis];
  const tall = height - Math.max(...[a, b].map(({ from, to }) => Math.min(from[2], to[2])));
  const leg = share * Math.min(run, tall);
  return [a, b].map((post): Corner => {
    const towards = post === a ? leg : -leg;
    const { from } = post;
    const under: Vec3 = [from[0] + (axis === 0 ? towards : 0), from[1] + (axis === 1 ? towards : 0), height];
    return { post: [post, [from[0], from[1], height - leg]], rail: [rail, under], on, leg };
  });
}

function proposal(corners: readonly Corner[], patient: Patient): Proposal | undefined {
  const { frame, file } = patient;
  const edits: Edit[] = file.pivots === undefined ? [{ pointer: "/pivots", to: [] }] : [];
  const held = new Set<string>();
  const legs = new Set<string>();
  for (const [n, { post, rail, on, leg }] of corners.entries()) {
    const kit = slantingKit(frame, post[0], rail[0]);
    if (!kit) return undefined;
    held.add(kit.tie.name);
    legs.add(formatQuantity(si(Math.round(leg * 1000) / 1000, "length"), "length", frame.units));
    edits.push(...slantingBar(kit, post, rail, on, freshId(file, `knee-${n + 1}`), patient));
  }
  const [far, by] = [legs, held].map((one) => [...one].join(" and "));
  return {
    words: `${corners.length} knee braces at 45°, ${far} from the corners of posts and rails, on their outer faces, held by ${by}`,
    edits,
  };
}

/**
 * Short slanting bars across the upper corners of outer bays, where a brace from post to post would be in the way: those along the
 * axis that gives most, shorter ones first, then those of all sides; at once all sides where the frame gives too far along both axes.
 */
export const kneeBrace: Cure = {
  id: "knee-brace",
  turn: 3,
  mends: ["frame.sways", "frame.unbraced", "frame.buckles"],
  *propose(ailment, patient): Iterable<Proposal> {
    const { frame } = patient;
    const all = postPairs(frame);
    const { axes, bothWays } = givingOf(frame, ailment);
    const along = (axis: 0 | 1, share: number): readonly Corner[] =>
      outerPairs(all, axis).flatMap((outer) => cornersOf(outer, frame, share));
    const first = SHARES.map((share) => along(axes[0], share));
    const others = SHARES.map((share) => along(axes[1], share));
    const whole = first.map((corners, i) => [...corners, ...(others[i] ?? [])]);
    const sets = [...(bothWays ? [] : first), ...(others[0]?.length ? whole : [])];
    for (const corners of sets) {
      const one = corners.length > 0 ? proposal(corners, patient) : undefined;
      if (one) yield one;
    }
  },
};
