import { boxPenetration, type OrientedBox } from "../geometry/box.ts";
import { closestPoints, type Segment } from "../geometry/segment.ts";
import {
  along,
  cross,
  distance,
  dot,
  length,
  midpoint,
  normalise,
  perpendicularPair,
  subtract,
  type Vec3,
} from "../geometry/vector.ts";

/** A round rod with flat ends: a screw's head or shank, a key, a hole. Its axis must have a length. */
export interface Rod {
  readonly line: Segment;
  /** m */
  readonly radius: number;
}

/** The box round a rod with one of its flats square to the way to a point: from there it is as far as the rod. */
function boxRound({ line, radius }: Rod, towards: Vec3): OrientedBox {
  const axis = normalise(subtract(line.to, line.from));
  const centre = midpoint(line.from, line.to);
  const way = subtract(towards, centre);
  const flat = along(way, axis, -dot(way, axis));
  const first = length(flat) < 1e-9 ? perpendicularPair(axis)[0] : normalise(flat);
  return { centre, axes: [axis, first, cross(axis, first)], half: [distance(line.from, line.to) / 2, radius, radius] };
}

/**
 * Free length between two rods [m], negative where they meet; never more than there is. The greater of two lower bounds: between
 * the rods with round ends put on, exact side by side, and between the boxes round them, exact where an end looks at a side
 * or an end.
 */
export function rodGap(a: Rod, b: Rod): number {
  if (distance(a.line.from, a.line.to) === 0 || distance(b.line.from, b.line.to) === 0) return Infinity;
  const nearest = closestPoints(a.line, b.line);
  const boxes = boxPenetration(boxRound(a, nearest.second), boxRound(b, nearest.first));
  return Math.max(nearest.distance - a.radius - b.radius, -boxes.depth);
}
