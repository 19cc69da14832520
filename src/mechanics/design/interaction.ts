/** Axial force with bending about both axes: utilisations, all forces and moments as sizes in consistent units. */

export interface Acting {
  readonly N: number;
  readonly My: number;
  readonly Mz: number;
}

export interface Resistance {
  readonly N: number;
  readonly My: number;
  readonly Mz: number;
}

const bendingSum = (acting: Acting, resists: Resistance): number =>
  ((acting.My / resists.My) ** 1.7 + (acting.Mz / resists.Mz) ** 1.7) ** 0.6;

/** Cross-section of a hollow profile, EN 1999-1-1:2007, 6.2.9.2, Eq. 6.43 (formula from memory), w0 = 1. */
export const hollowSectionUse = (acting: Acting, resists: Resistance): number =>
  (acting.N / resists.N) ** 1.3 + bendingSum(acting, resists);

/**
 * Flexural buckling with bending of a hollow member, EN 1999-1-1:2007, 6.3.3.1, Eq. 6.62 (formula from memory):
 * (N/(χ_min ω_x N_Rd))^0.8 + (1/ω_0) [(My/My,Rd)^1.7 + (Mz/Mz,Rd)^1.7]^0.6. ω = 1 without welds.
 */
export const hollowMemberUse = (acting: Acting, resists: Resistance, chiMin: number, omegaX = 1, omega0 = 1): number =>
  (acting.N / (chiMin * omegaX * resists.N)) ** 0.8 + bendingSum(acting, resists) / omega0;

/** The safe linear sum; `resists.N` is the buckling resistance. Common practice. */
export const linearUse = (acting: Acting, resists: Resistance): number =>
  acting.N / resists.N + acting.My / resists.My + acting.Mz / resists.Mz;
