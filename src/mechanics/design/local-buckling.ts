/** Local buckling of flat internal parts, EN 1999-1-1:2007, 6.1.4 and 6.1.5, class A material without welds. */

/** ε = √(250 MPa / f_o); `fo` in MPa. */
export const localEpsilon = (foMPa: number): number => Math.sqrt(250 / foMPa);

/** Limits β1, β2, β3 of width/thickness between the classes of Table 6.2: 11 ε, 16 ε, 22 ε. */
export function internalPartLimits(foMPa: number): {
  readonly beta1: number;
  readonly beta2: number;
  readonly beta3: number;
} {
  const epsilon = localEpsilon(foMPa);
  return { beta1: 11 * epsilon, beta2: 16 * epsilon, beta3: 22 * epsilon };
}

/** Thickness reduction ρ_c = 32/(β/ε) − 220/(β/ε)² of a slender internal part (C1 = 32, C2 = 220 of Table 6.3), at most 1. */
export function thicknessReduction(beta: number, foMPa: number): number {
  const ratio = beta / localEpsilon(foMPa);
  return beta <= internalPartLimits(foMPa).beta3 ? 1 : Math.min(1, 32 / ratio - 220 / ratio ** 2);
}
