/**
 * Flexural buckling of aluminium members, EN 1999-1-1:2007, 6.3.1.2. Pure formulas, any consistent units.
 */

/** Buckling class of the alloy and temper (Table 3.2: most artificially aged tempers are class A). */
export type BucklingClass = "A" | "B";

/** Imperfection factor α and plateau λ0 of Table 6.6 (from memory of the standard; class A also in TALAT 2301). */
export const BUCKLING_CURVES: Readonly<Record<BucklingClass, { readonly alpha: number; readonly plateau: number }>> = {
  A: { alpha: 0.2, plateau: 0.1 },
  B: { alpha: 0.32, plateau: 0 },
};

/** Elastic critical force of a bar with buckling length `length`, Euler: π² EI / length². */
export const criticalForce = (EI: number, length: number): number => (Math.PI ** 2 * EI) / length ** 2;

/** Buckling length as a multiple of L for a member that buckles at `critical`: π √(EI/critical) / L. */
export const lengthFactor = (EI: number, critical: number, L: number): number =>
  (Math.PI * Math.sqrt(EI / critical)) / L;

/** λ̄ = √(A_eff f_o / N_cr), Eq. 6.51. */
export const relativeSlenderness = (effectiveArea: number, fo: number, critical: number): number =>
  Math.sqrt((effectiveArea * fo) / critical);

/** λ1 = π √(E/f_o): the slenderness at which the critical stress equals f_o. */
export const slendernessOfProof = (E: number, fo: number): number => Math.PI * Math.sqrt(E / fo);

/** Reduction factor χ ≤ 1, Eq. 6.50: 1/(φ + √(φ² − λ̄²)) with φ = (1 + α(λ̄ − λ0) + λ̄²)/2. */
export function bucklingReduction(slenderness: number, bucklingClass: BucklingClass): number {
  const { alpha, plateau } = BUCKLING_CURVES[bucklingClass];
  const phi = (1 + alpha * (slenderness - plateau) + slenderness ** 2) / 2;
  return Math.min(1, 1 / (phi + Math.sqrt(phi ** 2 - slenderness ** 2)));
}

/** N_b,Rd = χ A_eff f_o / γ_M1, Eq. 6.49 without welds (κ = 1). */
export const bucklingResistance = (reduction: number, effectiveArea: number, fo: number, gammaM1: number): number =>
  (reduction * effectiveArea * fo) / gammaM1;
