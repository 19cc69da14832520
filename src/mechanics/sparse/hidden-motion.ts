import { at } from "./at.ts";
import type { FrontPlan } from "./front-plan.ts";
import { forwardOne } from "./substitute.ts";

/** Screening only, so far above rounding (1e-16) that chance cannot hide a mechanism; what is found is looked at exactly. */
const DOUBTFUL_BALANCE = 1e-12;
const SAMPLES = 3;
const SPREAD = 0x9e3779b1; // 2^32 divided by the golden ratio
const SIGN_BIT = 0x10000;

/**
 * Places whose pivot may be mere rounding although it is not small beside its own diagonal: turning a long frame about
 * its end moves its far joints so far that the rounding of their energy drowns the stiffness of the joint it turns about.
 *
 * With motion v of pivot d, its energies add up to about Σ vᵢ²·kᵢᵢ. For loads of √kᵢᵢ with signs at random, entry j of
 * L⁻¹·b is v·b, whose square has just that mean (Hutchinson 1990, the stochastic estimate of a trace): one forward
 * substitution estimates the energies of all pivots at once. The signs come from the numbers of the unknowns, so that
 * results repeat.
 */
export function doubtfulPlaces(
  plan: FrontPlan,
  panels: Float64Array,
  diagonal: Float64Array,
  scale: Float64Array,
): number[] {
  const energy = new Float64Array(diagonal.length);
  for (let sample = 0; sample < SAMPLES; sample++) {
    const x = new Float64Array(diagonal.length);
    for (let place = 0; place < x.length; place++) {
      const unknown = at(plan.unknownAt, place);
      const mixed = Math.imul(unknown * SAMPLES + sample + 1, SPREAD);
      const size = Math.sqrt(scale[unknown] as number);
      x[place] = (Math.imul(mixed ^ (mixed >>> 15), SPREAD) & SIGN_BIT) === 0 ? size : -size;
    }
    forwardOne(plan, panels, x);
    for (let place = 0; place < x.length; place++) {
      energy[place] = (energy[place] as number) + (x[place] as number) ** 2 / SAMPLES;
    }
  }
  const found: number[] = [];
  for (let place = 0; place < energy.length; place++) {
    if (Math.abs(diagonal[place] as number) < DOUBTFUL_BALANCE * (energy[place] as number)) found.push(place);
  }
  return found;
}
