/** Local buckling of flat parts, EN 1999-1-1:2007, 6.1.4 and 6.1.5, without welds. */

import type { BucklingClass } from "./flexural-buckling.ts";

/** ε = √(250 MPa / f_o); `fo` in MPa. */
export const localEpsilon = (foMPa: number): number => Math.sqrt(250 / foMPa);

/** Limits β1, β2, β3 of width/thickness between the classes of Table 6.2, class A material: 11 ε, 16 ε, 22 ε. */
export function internalPartLimits(foMPa: number): {
  readonly beta1: number;
  readonly beta2: number;
  readonly beta3: number;
} {
  const epsilon = localEpsilon(foMPa);
  return { beta1: 11 * epsilon, beta2: 16 * epsilon, beta3: 22 * epsilon };
}

/** A flat part held along both long edges, or along one. */
export type FlatPart = "internal" | "outstand";

/** β3/ε of Table 6.2 and C1, C2 of Table 6.3. Internal class A also in TALAT 2301; the rest from memory of the standard. */
const SLENDER: Readonly<
  Record<
    FlatPart,
    Readonly<Record<BucklingClass, { readonly beta3: number; readonly C1: number; readonly C2: number }>>
  >
> = {
  internal: { A: { beta3: 22, C1: 32, C2: 220 }, B: { beta3: 18, C1: 29, C2: 198 } },
  outstand: { A: { beta3: 6, C1: 10, C2: 24 }, B: { beta3: 5, C1: 9, C2: 20 } },
};

/** Thickness reduction ρ_c = C1/(β/ε) − C2/(β/ε)² of a slender part, at most 1; β = width/thickness, `fo` in MPa. */
export function thicknessReduction(
  beta: number,
  foMPa: number,
  part: FlatPart = "internal",
  bucklingClass: BucklingClass = "A",
): number {
  const { beta3, C1, C2 } = SLENDER[part][bucklingClass];
  const ratio = beta / localEpsilon(foMPa);
  return ratio <= beta3 ? 1 : Math.min(1, C1 / ratio - C2 / ratio ** 2);
}
