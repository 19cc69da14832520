/** What decides how much a T-nut may pull on the two lips it lies under; lengths in m, proof strength in Pa. */
interface LipGeometry {
  readonly opening: number;
  readonly lip: number;
  readonly cavity: number;
  readonly nutLength: number;
  readonly nutWidth: number;
  readonly proof: number;
}

/** Partial factor for members, EN 1999-1-1 6.1.3. */
const GAMMA_M1 = 1.1;

/**
 * Pull at which lips are expected to give, in ratings: without the partial factor (1.10), with the load spread at 45° along the bar
 * (25.4 mm of lip for a nut of 20 mm in slot 8: 1.27), at mean instead of guaranteed proof strength (1.15, common practice).
 */
export const LIPS_GIVE = 1.6;

export const LIP_SOURCE = "computed: plastic bending and shear of both lips, no load spread, / 1.10";

/**
 * Tension a nut may put on the lips, N: 2 min(L t fo / √3, L t² fo / (4 e)) / 1.10 (plastic theory: shear yield of a lip, and a
 * plastic hinge along its root). The nut presses on each lip from the edge of the opening to its own edge; the pressure's middle is
 * e = cavity / 2 − (opening + nut width) / 4 from the root. Spread of load along the bar is left out, which is on the safe side.
 */
export function lipRating(slot: LipGeometry): number {
  const shear = (slot.nutLength * slot.lip * slot.proof) / Math.sqrt(3);
  const lever = slot.cavity / 2 - (slot.opening + slot.nutWidth) / 4;
  const bending = (slot.nutLength * slot.lip ** 2 * slot.proof) / (4 * lever);
  return (2 * Math.min(shear, bending)) / GAMMA_M1;
}
