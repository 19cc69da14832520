import { distance, dot, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import { slipFractile } from "../mechanics/fasteners/slip-fractile.ts";
import { largest, linearCombination } from "../mechanics/piecewise.ts";
import type { Ref } from "../model/ref.ts";
import { LIPS_GIVE } from "../model/stock/lip-rating.ts";
import { ratedTorque } from "../model/stock/rated-torque.ts";
import { type Body, bodies, cutStation } from "./bodies.ts";
import { SCATTER } from "./clamping.ts";
import { defineFact } from "./fact.ts";
import type { View } from "./response.ts";
import { sectionOf } from "./sections.ts";

/** Two bars side by side and the ties between them. */
export interface TiedPair {
  readonly tie: Ref<"joint">;
  /** Slip load of one tie that 95 of 100 exceed, for a friction of 1, N. */
  readonly unitSlip: number;
  readonly testedSlip: number | undefined;
  /** Shear the most burdened tie bears where the two bars bend as one, N. */
  shear(view: View): number;
}

/** Bars this near to parallel (cosine) bend together. */
const PARALLEL = 0.999;

function shearAcross(view: View, body: Body, across: Vec3): number {
  const forces = view.forces(body.bar.ref.id);
  if (!forces) return 0;
  const { y, z } = body.axes;
  const across2 = linearCombination([
    [dot(y, across), forces.Vy],
    [dot(z, across), forces.Vz],
  ]);
  return Math.abs(largest(across2).value);
}

/** Second moment for bending in the direction `across`, m⁴. */
function stiffest(body: Body, across: Vec3): number {
  const { Iy, Iz } = sectionOf(body.bar.profile);
  return Iz * dot(body.axes.y, across) ** 2 + Iy * dot(body.axes.z, across) ** 2;
}

/** The longest stretch of bar that one tie has to itself, m. */
function longestShare(body: Body, stations: readonly number[]): number {
  const sorted = [...stations].sort((a, b) => a - b);
  const [from, to] = [cutStation(body, "from"), cutStation(body, "to")];
  let most = 0;
  for (const [i, at] of sorted.entries()) {
    const before = i === 0 ? from : (at + (sorted[i - 1] ?? at)) / 2;
    const after = i === sorted.length - 1 ? to : (at + (sorted[i + 1] ?? at)) / 2;
    most = Math.max(most, after - before);
  }
  return most;
}

/** Ties of parallel bars: shear flow V S / I of the pair bending as one (Gere and Goodno, section 5.11), times the stretch of a tie. */
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
      const stretch = longestShare(a, tie.at);
      const torque = Math.min(ratedTorque(screw, a.bar.profile), ratedTorque(screw, b.bar.profile));
      const cap = LIPS_GIVE * Math.min(a.bar.profile.lipRating, b.bar.profile.lipRating);
      list.push({
        tie: tie.ref,
        unitSlip: slipFractile({ torque, diameter: screw.diameter, cap }, SCATTER),
        testedSlip: tie.part.tested?.slip,
        shear: (view) => ((shearAcross(view, a, across) + shearAcross(view, b, across)) * first * stretch) / second,
      });
    }
    return list;
  },
});
