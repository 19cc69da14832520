import { extentAlong, type Prism } from "./prism.ts";
import { cross, dot, length, scale, type Vec3 } from "./vector.ts";

/** Sine [rad] under which two edges count as parallel, and cosine under which an axis counts as square to the fall. */
const PARALLEL = 1e-9;

/**
 * How far [m, ≥ 0] a convex body falls along the unit direction `way` before it meets one that stands; 0 where they touch, undefined where they
 * never meet within `most` [m]. Bodies that pass each other side by side no more than `touching` [m] deep do not meet, nor do bodies that already
 * run into each other deeper than that. Separating axes of moving bodies (C. Ericson, "Real-Time Collision Detection", 2005, 5.5.8): exact.
 */
export function fallUntilMet(
  falling: Prism,
  standing: Prism,
  way: Vec3,
  most: number,
  touching: number,
): number | undefined {
  let [first, last] = [-Infinity, Infinity];
  /** False where this axis keeps them apart. */
  const attempt = (axis: Vec3): boolean => {
    const [a0, a1] = extentAlong(falling, axis);
    const [b0, b1] = extentAlong(standing, axis);
    const speed = dot(axis, way);
    if (Math.abs(speed) < PARALLEL) return Math.min(a1 - b0, b1 - a0) > touching;
    const [meets, parts] = speed > 0 ? [(b0 - a1) / speed, (b1 - a0) / speed] : [(b1 - a0) / speed, (b0 - a1) / speed];
    first = Math.max(first, meets);
    last = Math.min(last, parts);
    return first < last && first <= most && last > touching;
  };
  for (const { normal } of [...falling.faces, ...standing.faces]) if (!attempt(normal)) return undefined;
  for (const p of falling.edges) {
    for (const q of standing.edges) {
      const normal = cross(p, q);
      const sine = length(normal);
      if (sine > PARALLEL && !attempt(scale(normal, 1 / sine))) return undefined;
    }
  }
  return first < -touching ? undefined : Math.max(0, first);
}
