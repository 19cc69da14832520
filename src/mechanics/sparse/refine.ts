import type { Factor } from "./factorise.ts";
import { multiply, multiplyAbsolute, type SymmetricMatrix } from "./symmetric-matrix.ts";

/** b − K·x for k vectors, column by column. */
export function residual(matrix: SymmetricMatrix, x: Float64Array, b: Float64Array, k: number): Float64Array {
  const product = multiply(matrix, x, k);
  return b.map((load, i) => load - (product[i] as number));
}

/**
 * Backward error of x: the least ε such that x solves exactly a system whose every entry is off by at most ε of itself,
 * max |b − K·x| / (|K|·|x| + |b|) by component (Oettli, Prager 1964). About 1e-16 is as good as doubles get.
 */
export function componentError(matrix: SymmetricMatrix, x: Float64Array, b: Float64Array, k: number): number {
  return worst(residual(matrix, x, b, k), multiplyAbsolute(matrix, x, k), b);
}

function worst(rest: Float64Array, size: Float64Array, b: Float64Array): number {
  let error = 0;
  for (let i = 0; i < rest.length; i++) {
    const off = Math.abs(rest[i] as number);
    if (off === 0) continue;
    const ratio = off / ((size[i] as number) + Math.abs(b[i] as number));
    if (!(ratio <= error)) error = ratio;
  }
  return error;
}

export interface Refined {
  readonly x: Float64Array;
  /** `componentError` of x. */
  readonly error: number;
  readonly steps: number;
}

const MOST_STEPS = 5;
const GOOD_ENOUGH = 4 * Number.EPSILON;
const LEAST_GAIN = 0.5; // a step that does not halve the error is the last

/**
 * Solves K·x = b for k right-hand sides and corrects x by its own residual while that helps: Skeel 1980, "Iterative
 * refinement implies numerical stability for Gaussian elimination". The error tells whether x is to be believed.
 */
export function solveRefined(factor: Factor, matrix: SymmetricMatrix, b: Float64Array, k: number): Refined {
  let x = factor.solve(b, k);
  let rest = residual(matrix, x, b, k);
  let error = worst(rest, multiplyAbsolute(matrix, x, k), b);
  let steps = 0;
  while (error > GOOD_ENOUGH && steps < MOST_STEPS) {
    const correction = factor.solve(rest, k);
    const next = x.map((value, i) => value + (correction[i] as number));
    const nextRest = residual(matrix, next, b, k);
    const nextError = worst(nextRest, multiplyAbsolute(matrix, next, k), b);
    if (!(nextError < error)) break;
    const enough = nextError > LEAST_GAIN * error;
    x = next;
    rest = nextRest;
    error = nextError;
    steps++;
    if (enough) break;
  }
  return { x, error, steps };
}
