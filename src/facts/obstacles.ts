import { type Bounds3, boundsOf } from "../geometry/bounds.ts";
import { type Prism, prismBounds, prismFromBox } from "../geometry/prism.ts";
import { cross, distance, midpoint, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";
import { headTop, socketOf } from "./sockets.ts";

/** A round thing with flat ends, m. */
export interface Round {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radius: number;
}

/** Something a tool or a hand may meet: a convex body, and the round thing it stands for where it is round. */
export interface Obstacle {
  /** A bar, a connector, or a screw whose head stands out. */
  readonly of: Ref;
  /** The joint a connector or screw belongs to. */
  readonly joint?: Ref<"joint">;
  readonly prism: Prism;
  readonly round?: Round;
  readonly bounds: Bounds3;
}

/** The square box round a round thing, two of its sides along `u` (unit, square to the axis). */
function boxOf({ from, to, radius }: Round, axis: Vec3, u: Vec3): Prism {
  const half = distance(from, to) / 2;
  return prismFromBox({ centre: midpoint(from, to), axes: [axis, u, cross(axis, u)], half: [half, radius, radius] });
}

/** Everything that may stand in the way of a tool: bars as solid envelopes, connectors outside the slots, heads of screws. */
export const obstacles = defineFact<readonly Obstacle[], { bodies: typeof bodies; placements: typeof placements }>({
  id: "obstacles",
  needs: { bodies, placements },
  compute({ bodies: all, placements: placed }) {
    const list: Obstacle[] = [];
    for (const body of all.values())
      if (body.prism) list.push({ of: body.bar.ref, prism: body.prism, bounds: body.bounds });
    for (const connector of placed.connectors) {
      const { joint } = connector;
      for (const prism of connector.pieces) list.push({ of: connector.ref, joint, prism, bounds: prismBounds(prism) });
      for (const screw of connector.screws) {
        const socket = socketOf(connector, screw, all);
        // Heads inside a slot or sunk flush are in nobody's way.
        if (!socket || socket.hole < Infinity || screw.screw.head === "countersunk") continue;
        const round = { from: screw.seat, to: headTop(screw), radius: screw.screw.headDiameter / 2 };
        const prism = boxOf(round, screw.axis, socket.zero);
        list.push({ of: screw.ref, joint, prism, round, bounds: boundsOf(prism.vertices) });
      }
    }
    return list;
  },
});
