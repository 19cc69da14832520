import { along, dot, normalise, subtract, type Vec3 } from "./vector.ts";

/** A plane through a point [m]; the unit normal points to its positive side. */
export interface Plane {
  readonly point: Vec3;
  readonly normal: Vec3;
}

/** Sine of the angle [rad] under which a line counts as parallel to a plane: 1e-12 m of error over a metre, pure rounding. */
const PARALLEL_SINE = 1e-12;

/** Distance of a point from the plane [m], positive on the side the normal points to. */
export const signedDistance = (plane: Plane, point: Vec3): number => dot(subtract(point, plane.point), plane.normal);

/** The point moved square onto the plane [m]. */
export const projectOnto = (plane: Plane, point: Vec3): Vec3 =>
  along(point, plane.normal, -signedDistance(plane, point));

/**
 * Where the line origin + t·direction meets the plane: t, in lengths of direction; undefined when they are parallel.
 * Throws RangeError on a zero direction.
 */
export function intersectLine(plane: Plane, origin: Vec3, direction: Vec3): number | undefined {
  if (Math.abs(dot(normalise(direction), plane.normal)) < PARALLEL_SINE) return undefined;
  return -signedDistance(plane, origin) / dot(direction, plane.normal);
}

/**
 * The mitre of two bars that meet at a corner: the plane in which each is the mirror image of the other.
 * `first` and `second` point along each bar away from the corner, of any length. The normal points out of the first bar's
 * material (for the second bar, turn it round). Two bars in one line give a square cut.
 * Throws RangeError where both point the same way: no plane parts them.
 */
export function mitrePlane(corner: Vec3, first: Vec3, second: Vec3): Plane {
  return { point: corner, normal: normalise(subtract(normalise(second), normalise(first))) };
}
