import type { Factor } from "./factorise.ts";

/**
 * The motion a vanished pivot stands for: v with K·v ≈ 0, largest component ±1, positive at `unknown`.
 * With pivot d of that unknown, L·D·Lᵀ·v = d·e for Lᵀ·v = e, the unit vector of the unknown; so K·v vanishes as d does.
 * Each suspicious pivot gives a motion of its own, and together they span all motions without strain.
 * Check it with `componentError` before speaking of a mechanism: a very slender frame also has tiny pivots.
 */
export function nullVector(factor: Factor, unknown: number): Float64Array {
  if (!(Number.isInteger(unknown) && unknown >= 0 && unknown < factor.n)) {
    throw new RangeError(`unknown ${unknown} does not exist: there are ${factor.n}`);
  }
  const unit = new Float64Array(factor.n);
  unit[unknown] = 1;
  const v = factor.solveUpper(unit);
  let largest = 0;
  for (const component of v) largest = Math.max(largest, Math.abs(component));
  return v.map((component) => component / largest);
}
