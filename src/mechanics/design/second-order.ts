/** Second-order effects without a second-order solution. */

/** 1/(1 − 1/α_cr): growth of sway deflections and their moments; Infinity at or below α_cr = 1 (Timoshenko and Gere, ch. 1). */
export const amplifier = (criticalFactor: number): number =>
  criticalFactor > 1 ? 1 / (1 - 1 / criticalFactor) : Infinity;

/**
 * Largest compressive stress of a pinned column whose force N acts at eccentricity e (secant formula, Gere and Goodno):
 * N/A (1 + e c/r² sec(L/2 √(N/EI))), r² = I/A. Infinity at or beyond the Euler force.
 */
export function secantStress(column: {
  readonly N: number;
  readonly A: number;
  readonly I: number;
  readonly E: number;
  readonly L: number;
  readonly e: number;
  readonly c: number;
}): number {
  const { N, A, I, E, L, e, c } = column;
  const phase = (L / 2) * Math.sqrt(N / (E * I));
  if (phase >= Math.PI / 2) return Infinity;
  return (N / A) * (1 + (e * c * A) / (I * Math.cos(phase)));
}

/** Basic sway imperfection φ0, rad: EN 1993-1-1 and EN 1999-1-1, 5.3.2. */
export const BASIC_SWAY = 1 / 200;

/**
 * Sway imperfection φ = φ0 α_h α_m, rad, EN 1999-1-1, 5.3.2: α_h = 2/√h between 2/3 and 1 (h in m),
 * α_m = √((1 + 1/m)/2) for m columns in a row.
 */
export function swayImperfection(height: number, columns: number, basic = BASIC_SWAY): number {
  const byHeight = Math.min(Math.max(2 / Math.sqrt(height), 2 / 3), 1);
  return basic * byHeight * Math.sqrt((1 + 1 / columns) / 2);
}
