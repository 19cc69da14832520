import type { Vec3 } from "../geometry/vector.ts";

/** What would slide whole is taken as kept by a sill or a shoe against its feet: by so many times the friction that it takes. */
const AGAINST_A_SILL = 1.25;
/** Friction that no load of a frame uses up: feet that stand on teeth. */
export const TEETH = 4;
/** What would turn on the floor is kept by more friction, this many times as much in turn. */
export const MORE_FRICTION = [1, 1.5, 2.5, Infinity] as const;

/**
 * Coefficient of friction under the feet while loads with this resultant [N] act: the floor's own where it holds the frame
 * as a whole, else as much as it takes.
 */
export function frictionUnder([x, y, z]: Vec3, floor: number, anchored: boolean): number {
  const [push, press] = [Math.hypot(x, y), -z];
  if (anchored) return floor > 0 ? floor : Number.EPSILON;
  if (push < floor * press) return floor;
  return press > 0 ? Math.min(TEETH, (AGAINST_A_SILL * push) / press) : TEETH;
}
