/** Lateral-torsional buckling of a bar bent about its strong axis. Pure formulas, consistent units. */

/**
 * Critical moment of a bar of doubly symmetric section under uniform moment, both ends held sideways and against twist,
 * free to warp: π/L √(EI G J (1 + π² E Iw/(G J L²))), I about the weak axis (Timoshenko and Gere, ch. 6).
 */
export function criticalMoment(EIweak: number, GJ: number, EIw: number, length: number): number {
  const warping = (Math.PI ** 2 * EIw) / (GJ * length ** 2);
  return (Math.PI / length) * Math.sqrt(EIweak * GJ * (1 + warping));
}

/** α_LT and λ̄_0,LT for sections judged elastically (class 3 and 4), EN 1999-1-1:2007, 6.3.2.2 (from memory). */
const ALPHA = 0.2;
const PLATEAU = 0.4;

/** χ_LT ≤ 1, EN 1999-1-1:2007, Eq. 6.56, from λ̄_LT = √(W_el f_o / M_cr). */
export function lateralReduction(slenderness: number): number {
  if (slenderness <= PLATEAU) return 1;
  const phi = (1 + ALPHA * (slenderness - PLATEAU) + slenderness ** 2) / 2;
  return Math.min(1, 1 / (phi + Math.sqrt(phi ** 2 - slenderness ** 2)));
}
