import type { Vec3 } from "../geometry/vector.ts";
import { cross, dot, subtract } from "../geometry/vector.ts";
import type { Triad } from "./model.ts";

export const ORIGIN: Vec3 = [0, 0, 0];

/** Departure from an orthonormal right-handed triad allowed in input; the rounding of unit vectors is far below it. */
export const UNIT_TOLERANCE = 1e-9;

/** True when the axes are unit, perpendicular and right-handed. */
export function isTriad({ x, y, z }: Triad): boolean {
  const off = subtract(cross(x, y), z);
  return (
    Math.abs(dot(x, x) - 1) <= 2 * UNIT_TOLERANCE && // (1 + t)² − 1 = 2 t
    Math.abs(dot(y, y) - 1) <= 2 * UNIT_TOLERANCE &&
    Math.abs(dot(x, y)) <= UNIT_TOLERANCE &&
    dot(off, off) <= UNIT_TOLERANCE ** 2
  );
}
