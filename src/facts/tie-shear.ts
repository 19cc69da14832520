import { distance, dot, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import { slipFractile } from "../mechanics/fasteners/slip-fractile.ts";
import { integralBetween, linearCombination, type Piecewise } from "../mechanics/piecewise.ts";
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

/** ∫ of the shear of both bars together over a stretch of the first, from its cut end, N·m: their sections' shears added with their signs. */
function sharedShear(view: View, a: Body, b: Body, across: Vec3, [from, to]: Stretch): number {
  const [va, vb] = [shearAcross(view, a, across), shearAcross(view, b, across)];
  if (!va || !vb) return 0;
  const way = dot(a.axes.x, b.axes.x) > 0 ? 1 : -1;
  const ahead = dot(subtract(cutPoint(b, "from"), cutPoint(a, "from")), a.axes.x);
  // A place on the first bar, from its cut end, as a place on the second.
  const onB = (x: number): number => way * (x - ahead);
  const [first, last] = [Math.min(onB(from), onB(to)), Math.max(onB(from), onB(to))];
  return integralBetween(va, from, to) + way * integralBetween(vb, first, last);
}

/** Second moment for bending in the direction `across`, m⁴. */
function stiffest(body: Body, across: Vec3): number {
  const { Iy, Iz } = sectionOf(body.bar.profile);
  return Iz * dot(body.axes.y, across) ** 2 + Iy * dot(body.axes.z, across) ** 2;
}

/** The stretch of bar that each tie has to itself: to half way to the next, or to the end. */
function stretches(body: Body, stations: readonly number[]): readonly Stretch[] {
  const sorted = [...stations].sort((a, b) => a - b);
  const [start, end] = [cutStation(body, "from"), cutStation(body, "to")];
  return sorted.map((at, i) => {
    const [before, after] = [sorted[i - 1], sorted[i + 1]];
    return [
      before === undefined ? 0 : (at + before) / 2 - start,
      (after === undefined ? end : (at + after) / 2) - start,
    ];
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
      const shares = stretches(a, tie.at);
      const { torque } = freeChoice(frame, screw, [a, b]);
      const cap = LIPS_GIVE * Math.min(a.bar.profile.lipRating, b.bar.profile.lipRating);
      list.push({
        tie: tie.ref,
        unitSlip: slipFractile({ torque, diameter: screw.diameter, cap }, SCATTER),
        testedSlip: tie.part.tested?.slip,
        lever: second / first,
        change: (view) => Math.max(0, ...shares.map((share) => Math.abs(sharedShear(view, a, b, across, share)))),
      });
    }
    return list;
  },
});
