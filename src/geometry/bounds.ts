import type { Vec3 } from "./vector.ts";

/** A box along the global axes [m]. */
export interface Bounds3 {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The smallest box around points [m]. Throws RangeError where there are none. */
export function boundsOf(points: Iterable<Vec3>): Bounds3 {
  let [x0, y0, z0] = [Infinity, Infinity, Infinity];
  let [x1, y1, z1] = [-Infinity, -Infinity, -Infinity];
  for (const [x, y, z] of points) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    z0 = Math.min(z0, z);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
    z1 = Math.max(z1, z);
  }
  if (x0 > x1) throw new RangeError("no points have no bounds");
  return { min: [x0, y0, z0], max: [x1, y1, z1] };
}

/** Whether two boxes overlap or come within `margin` [m] of each other along every axis; touching counts. */
export function boundsOverlap(a: Bounds3, b: Bounds3, margin = 0): boolean {
  return (
    a.min[0] - margin <= b.max[0] &&
    b.min[0] - margin <= a.max[0] &&
    a.min[1] - margin <= b.max[1] &&
    b.min[1] - margin <= a.max[1] &&
    a.min[2] - margin <= b.max[2] &&
    b.min[2] - margin <= a.max[2]
  );
}
