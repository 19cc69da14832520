import { distance, dot, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import { slipFractile } from "../mechanics/fasteners/slip-fractile.ts";
import { linearCombination, type Piecewise, valueAt } from "../mechanics/piecewise.ts";
import type { Ref } from "../model/ref.ts";
import { LIPS_GIVE } from "../model/stock/lip-rating.ts";
import { ratedTorque } from "../model/stock/rated-torque.ts";
import { type Body, bodies, cutPoint, cutStation } from "./bodies.ts";
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

/** Places this far past an end still count as the end, m. */
const NEAR = 1e-9;
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

/**
 * Largest shear of the two bars together, N: what both sections bear at one place added with their signs, at the ends, jumps
 * and kinks of either. Between these places shear runs straight or bends one way only.
 */
function sharedShear(view: View, a: Body, b: Body, across: Vec3): number {
  const [va, vb] = [shearAcross(view, a, across), shearAcross(view, b, across)];
  if (!va || !vb) return 0;
  const way = dot(a.axes.x, b.axes.x) > 0 ? 1 : -1;
  const startOf = (body: Body): Vec3 => cutPoint(body, "from");
  const ahead = dot(subtract(startOf(b), startOf(a)), a.axes.x);
  // A place on the first bar, from its cut end, as a place on the second.
  const onB = (x: number): number => way * (x - ahead);
  const [endA, endB] = [va.breaks[va.breaks.length - 1] ?? 0, vb.breaks[vb.breaks.length - 1] ?? 0];
  const places = [...va.breaks, ...[...vb.breaks].map((x) => ahead + way * x)];
  let most = 0;
  for (const x of places) {
    const other = onB(x);
    for (const side of ["before", "after"] as const) {
      const first = x < -NEAR || x > endA + NEAR ? 0 : valueAt(va, x, side);
      const turned = way > 0 ? side : side === "before" ? "after" : "before";
      const second = other < -NEAR || other > endB + NEAR ? 0 : valueAt(vb, other, turned);
      most = Math.max(most, Math.abs(first + way * second));
    }
  }
  return most;
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
        shear: (view) => (sharedShear(view, a, b, across) * first * stretch) / second,
      });
    }
    return list;
  },
});
