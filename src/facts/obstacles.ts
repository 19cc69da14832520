import { type Bounds3, boundsOf } from "../geometry/bounds.ts";
import { boxBounds, type OrientedBox } from "../geometry/box.ts";
import { type Prism, prismBounds, prismFromBox } from "../geometry/prism.ts";
import { along, cross, distance, midpoint, type Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { panelBoxes } from "./panel-boxes.ts";
import { screwedParts } from "./screwed-parts.ts";
import { headTop, socketOf } from "./sockets.ts";
import { standDirection, standings } from "./standings.ts";

/** A round thing with flat ends, m. */
export interface Round {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radius: number;
}

/** Something a tool or a hand may meet: a convex body, and the round thing it stands for where it is round. */
export interface Obstacle {
  /** A bar, a connector, a screw whose head stands out, a panel, a foot or caster. */
  readonly of: Ref;
  /** What is put in place with it: the connector of a screw, else the thing itself. */
  readonly part: Ref;
  /** The joint, door or panel a connector or screw belongs to. */
  readonly joint?: Ref;
  readonly prism: Prism;
  readonly round?: Round;
  readonly bounds: Bounds3;
}

/** The square box round a round thing, two of its sides along `u` (unit, square to the axis). */
function boxOf({ from, to, radius }: Round, axis: Vec3, u: Vec3): Prism {
  const half = distance(from, to) / 2;
  return prismFromBox({ centre: midpoint(from, to), axes: [axis, u, cross(axis, u)], half: [half, radius, radius] });
}

/** A panel less square notches in its corners, as two boxes across each other; of notches that are not square the longer side counts. */
function withoutCorners(box: OrientedBox, notch: number): readonly OrientedBox[] {
  if (notch <= 0) return [box];
  const [u, v, t] = box.half;
  const halves = [
    [u - notch, v, t],
    [u, v - notch, t],
  ] as const;
  return halves.filter(([a, b]) => a > 0 && b > 0).map((half) => ({ ...box, half }));
}

/**
 * Everything that may stand in the way of a tool: bars as solid envelopes, connectors outside the slots, heads of
 * screws, panels, feet and casters.
 */
export const obstacles = defineFact<
  readonly Obstacle[],
  {
    bodies: typeof bodies;
    parts: typeof screwedParts;
    panels: typeof panelBoxes;
    standings: typeof standings;
  }
>({
  id: "obstacles",
  needs: { bodies, parts: screwedParts, panels: panelBoxes, standings },
  compute({ bodies: all, parts, panels, standings: feet }) {
    const list: Obstacle[] = [];
    for (const body of all.values())
      if (body.prism) list.push({ of: body.bar.ref, part: body.bar.ref, prism: body.prism, bounds: body.bounds });
    for (const connector of parts.all) {
      const { joint } = connector;
      for (const prism of connector.pieces)
        list.push({ of: connector.ref, part: connector.ref, joint, prism, bounds: prismBounds(prism) });
      for (const screw of connector.screws) {
        const socket = socketOf(connector, screw, all);
        // Heads inside a slot or sunk flush are in nobody's way.
        if (!socket || socket.hole < Infinity || screw.screw.head === "countersunk") continue;
        const round = { from: screw.seat, to: headTop(screw), radius: screw.screw.headDiameter / 2 };
        const prism = boxOf(round, screw.axis, socket.zero);
        list.push({ of: screw.ref, part: connector.ref, joint, prism, round, bounds: boundsOf(prism.vertices) });
      }
    }
    for (const { panel, box } of panels.values()) {
      if (!box) continue;
      for (const piece of withoutCorners(box, Math.max(0, ...(panel.notches ?? []))))
        list.push({ of: panel.ref, part: panel.ref, prism: prismFromBox(piece), bounds: boxBounds(piece) });
    }
    for (const standing of feet.all) {
      const down = standDirection(standing);
      const { stand, top, body } = standing;
      const to = along(top, down, stand.raise ?? stand.part.raise[0]);
      const round = { from: top, to, radius: Math.max(stand.part.diameter, stand.part.collar) / 2 };
      const prism = boxOf(round, down, body.axes.y);
      list.push({ of: stand.ref, part: stand.ref, prism, round, bounds: boundsOf(prism.vertices) });
    }
    return list;
  },
});
