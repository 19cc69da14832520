import type { Factor } from "./factorise.ts";
import { multiply, multiplyAbsolute, pivotScale, type SymmetricMatrix } from "./symmetric-matrix.ts";

/**
 * The motion a vanished pivot stands for: v with K·v ≈ 0, largest component ±1, positive at `unknown`.
 * With pivot d of that unknown, L·D·Lᵀ·v = d·e for Lᵀ·v = e, the unit vector of the unknown; so K·v vanishes as d does.
 * Each suspicious pivot gives a motion of its own, and together they span all motions without strain.
 * Check it with `relativeStrain` before speaking of a mechanism: a very slender frame also has tiny pivots.
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

/**
 * How far a motion is from being free: the largest force left of K·v by the largest that went into it, each force measured
 * by the root of its own stiffness, so that forces and moments compare. Rounding (below 1e-12 or so) for a mechanism.
 */
export function relativeStrain(matrix: SymmetricMatrix, v: Float64Array): number {
  const left = multiply(matrix, v);
  const went = multiplyAbsolute(matrix, v);
  const scale = pivotScale(matrix);
  let largestLeft = 0;
  let largestWent = 0;
  for (let i = 0; i < matrix.n; i++) {
    const own = Math.sqrt(scale[i] as number);
    if (own === 0) continue;
    largestLeft = Math.max(largestLeft, Math.abs(left[i] as number) / own);
    largestWent = Math.max(largestWent, (went[i] as number) / own);
  }
  return largestWent === 0 ? 0 : largestLeft / largestWent;
}
