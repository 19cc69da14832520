import type { Vec3 } from "../geometry/vector.ts";
import { cross, distance, dot, length } from "../geometry/vector.ts";
import type { Triad } from "./model.ts";

export const ORIGIN: Vec3 = [0, 0, 0];

/** Departure from an orthonormal right-handed triad allowed in input; the rounding of unit vectors is far below it. */
export const UNIT_TOLERANCE = 1e-9;

/** True when the axes are unit, perpendicular and right-handed. */
export function isTriad({ x, y, z }: Triad): boolean {
  const defects = [Math.abs(length(x) - 1), Math.abs(length(y) - 1), Math.abs(dot(x, y)), distance(cross(x, y), z)];
  return defects.every((defect) => defect <= UNIT_TOLERANCE);
}
