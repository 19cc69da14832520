import { add, dot, length, normalise, scale, subtract } from "../geometry/vector.ts";
import { medianPreload, slipFractile } from "../mechanics/fasteners/slip-fractile.ts";
import type { Frame } from "../model/frame.ts";
import { LIPS_GIVE } from "../model/stock/lip-rating.ts";
import { ratedTorque } from "../model/stock/rated-torque.ts";
import type { Connector } from "../model/stock/stock.ts";
import { type Body, bodies } from "./bodies.ts";
import { SCATTER } from "./clamping.ts";
import { defineFact } from "./fact.ts";
import type { Held, HeldByFriction } from "./held-by-friction.ts";
import { linkAxes } from "./link-axes.ts";
import type { View } from "./response.ts";
import { type Link, structure } from "./structure.ts";

/** A pivot as what holds two bars by friction: the screws of its leaves, or the one of a tie. */
export interface PivotForces extends HeldByFriction {
  readonly link: Link;
}

/** Screws of the leaf that has fewer: one leaf lies to either side of the pin. The one screw of a tie holds both bars. */
function screwsOfALeaf(part: Connector): number {
  const holes = part.kind === "pivot" || part.kind === "hinge" ? part.holes : [];
  const first = holes.filter(({ at }) => at[0] < 0).length;
  return Math.max(1, Math.min(first, holes.length - first));
}

/** What one screw of the leaf holds on the weaker of the two bars. */
function screwIn(part: Connector, a: Body, b: Body, frame: Frame): Held | undefined {
  const screw = frame.stock.screws.get(part.screw);
  if (!screw) return undefined;
  const profiles = [a.bar.profile, b.bar.profile];
  const torque = Math.min(...profiles.map((profile) => ratedTorque(screw, profile)));
  const cap = LIPS_GIVE * Math.min(...profiles.map(({ lipRating }) => lipRating));
  const reckoned = { torque, diameter: screw.diameter, cap };
  return {
    unitSlip: slipFractile(reckoned, SCATTER),
    preload: medianPreload(reckoned, SCATTER),
    ...(part.tested?.slip === undefined ? {} : { testedSlip: part.tested.slip / screwsOfALeaf(part) }),
  };
}

/**
 * What the screws of pivots bear: the force of the pivot across its axis, shared evenly by the screws of a leaf or borne by that of a tie, and
 * along it as a pull. The pin passes no moment about itself; what else turns the leaves is left to their flat on the bar.
 */
export const pivotForces = defineFact<readonly PivotForces[], { structure: typeof structure; bodies: typeof bodies }>({
  id: "pivot-forces",
  needs: { structure, bodies },
  compute({ structure: { links }, bodies: all }, frame) {
    const pivots = new Map(frame.pivots.map((pivot) => [pivot.ref.id, pivot]));
    return links.flatMap((link, index): PivotForces[] => {
      const pivot = pivots.get(link.joint.id);
      const [body, onto] = [all.get(link.bar), all.get(link.onto)];
      const held = pivot && body && onto && screwIn(pivot.part, body, onto, frame);
      if (!pivot || !body || !held) return [];
      const each = 1 / screwsOfALeaf(pivot.part);
      const axis = normalise(pivot.axis);
      const { x, y, z } = linkAxes(link, body.axes);
      const apart = dot(subtract(link.at, onto?.bar.from ?? link.at), axis);
      return [
        {
          link,
          borne(view: View) {
            const [a, b, c] = view.link(index);
            const force = add(add(scale(x, a), scale(y, b)), scale(z, c));
            // The force on the bar that hangs there: away from the other bar it pulls on the screws.
            const square = dot(force, axis) * Math.sign(apart);
            const across = length(subtract(force, scale(axis, dot(force, axis))));
            return { clamps: [{ clamp: held, shear: across * each, pull: Math.max(0, -square) * each }] };
          },
        },
      ];
    });
  },
});
