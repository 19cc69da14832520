import { COEFFICIENTS } from "./stiffness.ts";
import type { MemberTable } from "./table.ts";

/**
 * uᵀ k u of member `m` for its end displacements (12, local). Formed from the changes of shape (stretch, twist, end
 * rotations against the chord), not from end forces, so that a motion without strain gives the square of a rounding
 * error instead of a rounding error.
 */
export function twiceStrainEnergy(t: MemberTable, m: number, u: Float64Array): number {
  const c = COEFFICIENTS * m;
  const L = t.length[m] as number;
  const g = (i: number): number => u[i] as number;
  const k = (i: number): number => t.stiffness[c + i] as number;
  const chordZ = (g(7) - g(1)) / L;
  const chordY = -(g(8) - g(2)) / L;
  const [a, b] = [g(5) - chordZ, g(11) - chordZ];
  const [d, e] = [g(4) - chordY, g(10) - chordY];
  return (
    k(0) * (g(6) - g(0)) ** 2 +
    k(1) * (g(9) - g(3)) ** 2 +
    k(4) * (a * a + b * b) +
    2 * k(5) * a * b +
    k(8) * (d * d + e * e) +
    2 * k(9) * d * e
  );
}
