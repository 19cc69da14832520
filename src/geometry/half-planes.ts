import { convexHull } from "./convex.ts";
import type { Vec2 } from "./vector.ts";

/** All points p with out·p ≤ reach; `out` is a unit vector, reach in m. */
export interface HalfPlane {
  readonly out: Vec2;
  readonly reach: number;
}

/** Rounding of places on two lines at once, m. */
const ON = 1e-9;

/** The corners, counter-clockwise, of what lies within all of some half-planes; empty where they shut nothing in. */
export function cornersWithin(sides: readonly HalfPlane[]): readonly Vec2[] {
  const corners = sides.flatMap((a, i) =>
    sides.slice(i + 1).flatMap((b): readonly Vec2[] => {
      const det = a.out[0] * b.out[1] - a.out[1] * b.out[0];
      if (Math.abs(det) < ON) return [];
      const at: Vec2 = [
        (a.reach * b.out[1] - b.reach * a.out[1]) / det,
        (b.reach * a.out[0] - a.reach * b.out[0]) / det,
      ];
      return sides.every(({ out, reach }) => out[0] * at[0] + out[1] * at[1] <= reach + ON) ? [at] : [];
    }),
  );
  const ring = convexHull(corners);
  return ring.length < 3 ? [] : ring;
}
