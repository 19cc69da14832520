import { distance, dot, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import { slipFractile } from "../mechanics/fasteners/slip-fractile.ts";
import { integralBetween, linearCombination, type Piecewise, valueAt } from "../mechanics/piecewise.ts";
import type { Ref } from "../model/ref.ts";
import { LIPS_GIVE } from "../model/stock/lip-rating.ts";
import { type Body, bodies, cutPoint, cutStation } from "./bodies.ts";
import { SCATTER } from "./clamping.ts";
import { defineFact } from "./fact.ts";
import { freeChoice } from "./free-choice.ts";
import type { View } from "./response.ts";
import { sectionOf } from "./sections.ts";

/** Two bars side by side and the ties between them. */
export interface TiedPair {
  readonly tie: Ref<"joint">;
  /** Slip load of one tie that 95 of 100 exceed, for a friction of 1, N. */
  readonly unitSlip: number;
  readonly testedSlip: number | undefined;
  /** I / S of the pair bending as one, m. */
  readonly lever: number;
  /** ∫ V dx over the stretch of the most burdened tie, N·m; over the lever, what that tie bears. */
  change(view: View): number;
}

/** Of the first bar, from its cut end, m. */
type Stretch = readonly [from: number, to: number];

/** Bars this near to parallel (cosine) bend together. */
const PARALLEL = 0.999;
/** A bar that runs on past the end of the other by less than this, m, ends with it. */
const RUNS_ON = 1e-3;

/** Shear of a bar along its length in the direction `across`, N. */
function shearAcross(view: View, body: Body, across: Vec3): Piecewise | undefined {
  const forces = view.forces(body.bar.ref.id);
  if (!forces) return undefined;
  const { y, z } = body.axes;
  return linearCombination([
    [dot(y, across), forces.Vy],
    [dot(z, across), forces.Vz],
  ]);
}

/** Moment of a bar whose slope is that shear, N·m. */
function momentAcross(view: View, body: Body, across: Vec3): Piecewise | undefined {
  const forces = view.forces(body.bar.ref.id);
  if (!forces) return undefined;
  const { y, z } = body.axes;
  return linearCombination([
    [-dot(y, across), forces.Mz],
    [dot(z, across), forces.My],
  ]);
}

/** A place on the first bar, from its cut end, as a place on the second, m; and whether they are drawn the same way. */
function placeOn(a: Body, b: Body): { readonly way: 1 | -1; onB(x: number): number; onA(x: number): number } {
  const way = dot(a.axes.x, b.axes.x) > 0 ? 1 : -1;
  const ahead = dot(subtract(cutPoint(b, "from"), cutPoint(a, "from")), a.axes.x);
  return { way, onB: (x) => way * (x - ahead), onA: (x) => way * x + ahead };
}

const lengthOf = (body: Body): number => cutStation(body, "to") - cutStation(body, "from");

/** Where both bars are, from the cut end of the first. */
function overlap(a: Body, b: Body): Stretch {
  const { onA } = placeOn(a, b);
  const ends = [onA(0), onA(lengthOf(b))];
  return [Math.max(0, Math.min(...ends)), Math.min(lengthOf(a), Math.max(...ends))];
}

/** Moment of the bar that runs on alone past an end of the other, where that end is, N·m; none where both end there. */
function aloneAt(view: View, a: Body, b: Body, across: Vec3, x: number): number {
  const inside = (body: Body, at: number): boolean => at > RUNS_ON && at < lengthOf(body) - RUNS_ON;
  const { onB } = placeOn(a, b);
  for (const [body, at] of [
    [a, x],
    [b, onB(x)],
  ] as const) {
    const moment = inside(body, at) ? momentAcross(view, body, across) : undefined;
    if (moment) return valueAt(moment, at);
  }
  return 0;
}

/** ∫ of the shear of both bars together over a stretch of the first, from its cut end, N·m: their sections' shears added with their signs. */
function sharedShear(view: View, a: Body, b: Body, across: Vec3, [from, to]: Stretch): number {
  const [va, vb] = [shearAcross(view, a, across), shearAcross(view, b, across)];
  if (!va || !vb) return 0;
  const { way, onB } = placeOn(a, b);
  const [first, last] = [Math.min(onB(from), onB(to)), Math.max(onB(from), onB(to))];
  return integralBetween(va, from, to) + way * integralBetween(vb, first, last);
}

/** Second moment for bending in the direction `across`, m⁴. */
function stiffest(body: Body, across: Vec3): number {
  const { Iy, Iz } = sectionOf(body.bar.profile);
  return Iz * dot(body.axes.y, across) ** 2 + Iy * dot(body.axes.z, across) ** 2;
}

/** The stretch that each tie has to itself where both bars are: to half way to the next, or to the end. */
function stretches(body: Body, both: Stretch, stations: readonly number[]): readonly Stretch[] {
  const start = cutStation(body, "from");
  const sorted = stations.map((at) => at - start).sort((a, b) => a - b);
  return sorted.map((at, i) => {
    const [before, after] = [sorted[i - 1], sorted[i + 1]];
    return [before === undefined ? both[0] : (at + before) / 2, after === undefined ? both[1] : (at + after) / 2];
  });
}

/**
 * What the moment that both bars share changes by along each tie's stretch, N·m. Where one bar ends the other has borne all alone: the
 * outermost tie brings in what the pair shares from there on, as at the end of a cover plate.
 */
function changes(
  view: View,
  a: Body,
  b: Body,
  across: Vec3,
  both: Stretch,
  shares: readonly Stretch[],
): readonly number[] {
  const [before, after] = [aloneAt(view, a, b, across, both[0]), aloneAt(view, a, b, across, both[1])];
  const [only] = shares;
  if (shares.length === 1 && only && (before !== 0 || after !== 0)) {
    const middle = (only[0] + only[1]) / 2;
    return [
      before + sharedShear(view, a, b, across, [only[0], middle]),
      sharedShear(view, a, b, across, [middle, only[1]]) - after,
    ];
  }
  return shares.map((share, i) => {
    const sum = sharedShear(view, a, b, across, share);
    return sum + (i === 0 ? before : 0) - (i === shares.length - 1 ? after : 0);
  });
}

/** Ties of parallel bars: shear flow V S / I of the pair bending as one (Gere and Goodno, section 5.11), summed over the stretch of each tie. */
export const tieShear = defineFact<readonly TiedPair[], { bodies: typeof bodies }>({
  id: "tie-shear",
  needs: { bodies },
  compute({ bodies: all }, frame) {
    const list: TiedPair[] = [];
    for (const tie of frame.ties) {
      const [a, b] = [all.get(tie.bars[0]), all.get(tie.bars[1])];
      const screw = frame.stock.screws.get(tie.part.screw);
      if (!a || !b || !screw || Math.abs(dot(a.axes.x, b.axes.x)) < PARALLEL) continue;
      const apart = subtract(b.bar.from, a.bar.from);
      const along = dot(apart, a.axes.x);
      const foot: Vec3 = [
        apart[0] - along * a.axes.x[0],
        apart[1] - along * a.axes.x[1],
        apart[2] - along * a.axes.x[2],
      ];
      const d = distance(foot, [0, 0, 0]);
      if (d < 1e-6) continue;
      const across = normalise(foot);
      const [A, B] = [sectionOf(a.bar.profile).A, sectionOf(b.bar.profile).A];
      const first = (A * B * d) / (A + B);
      const second = stiffest(a, across) + stiffest(b, across) + first * d;
      const both = overlap(a, b);
      const shares = stretches(a, both, tie.at);
      const { torque } = freeChoice(frame, screw, [a, b]);
      const cap = LIPS_GIVE * Math.min(a.bar.profile.lipRating, b.bar.profile.lipRating);
      list.push({
        tie: tie.ref,
        unitSlip: slipFractile({ torque, diameter: screw.diameter, cap }, SCATTER),
        testedSlip: tie.part.tested?.slip,
        lever: second / first,
        change: (view) => Math.max(0, ...changes(view, a, b, across, both, shares).map(Math.abs)),
      });
    }
    return list;
  },
});
