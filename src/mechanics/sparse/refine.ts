import type { Factor } from "./factorise.ts";
import { type Products, productsOf, type Room, roomFor, TOGETHER } from "./products.ts";
import type { SymmetricMatrix } from "./symmetric-matrix.ts";

/**
 * Backward error of x: the least ε such that x solves exactly a system whose every entry is off by at most ε of itself,
 * max |b − K·x| / (|K|·|x| + |b|) by component (Oettli, Prager 1964). About 1e-16 is as good as doubles get.
 */
export function componentError(matrix: SymmetricMatrix, x: Float64Array, b: Float64Array, k: number): number {
  let error = 0;
  const room = k > 1 ? roomFor(matrix) : undefined;
  for (let done = 0; done < k; done += TOGETHER) {
    const [from, to] = [done * matrix.n, Math.min(done + TOGETHER, k) * matrix.n];
    const own = worst(productsOf(matrix, x.subarray(from, to), room), b.subarray(from, to));
    if (!(own <= error)) error = own;
  }
  return error;
}

/** Turns the products into residuals b − K·x, in place, and returns the error they stand for. */
function worst({ product, size }: Products, b: Float64Array): number {
  let error = 0;
  for (let i = 0; i < product.length; i++) {
    const load = b[i] as number;
    const rest = load - (product[i] as number);
    product[i] = rest;
    const off = Math.abs(rest);
    if (off === 0) continue;
    const ratio = off / ((size[i] as number) + Math.abs(load));
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
 * refinement implies numerical stability for Gaussian elimination". The error tells whether x is to be believed. A few
 * right-hand sides are taken at a time, each such group with steps of its own, so that what is worked on stays in fast memory.
 */
export function solveRefined(factor: Factor, matrix: SymmetricMatrix, b: Float64Array, k: number): Refined {
  const { n } = matrix;
  const x = new Float64Array(n * k);
  let [error, steps] = [0, 0];
  const room = k > 1 ? roomFor(matrix) : undefined;
  for (let done = 0; done < k; done += TOGETHER) {
    const width = Math.min(TOGETHER, k - done);
    const own = refineGroup(factor, matrix, b.subarray(done * n, (done + width) * n), width, room);
    x.set(own.x, done * n);
    if (!(own.error <= error)) error = own.error;
    steps = Math.max(steps, own.steps);
  }
  return { x, error, steps };
}

function refineGroup(
  factor: Factor,
  matrix: SymmetricMatrix,
  b: Float64Array,
  k: number,
  room: Room | undefined,
): Refined {
  let x = factor.solve(b, k);
  let products = productsOf(matrix, x, room);
  let error = worst(products, b);
  let steps = 0;
  while (error > GOOD_ENOUGH && steps < MOST_STEPS) {
    const next = factor.solve(products.product, k);
    for (let i = 0; i < next.length; i++) next[i] = (x[i] as number) + (next[i] as number);
    const nextProducts = productsOf(matrix, next, room);
    const nextError = worst(nextProducts, b);
    if (!(nextError < error)) break;
    const enough = nextError > LEAST_GAIN * error;
    x = next;
    products = nextProducts;
    error = nextError;
    steps++;
    if (enough) break;
  }
  return { x, error, steps };
}
