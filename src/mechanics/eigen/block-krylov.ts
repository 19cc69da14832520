import type { Factor } from "../sparse/factorise.ts";
import type { SymmetricMatrix } from "../sparse/symmetric-matrix.ts";
import { multiply } from "../sparse/symmetric-matrix.ts";
import type { Basis } from "./basis.ts";
import { append, combine, emptyBasis, keepBest, projected, residualOf, setImages, withoutImages } from "./basis.ts";
import type { DenseEigen } from "./dense-symmetric.ts";
import { denseSymmetricEigen } from "./dense-symmetric.ts";
import { BLOCK, freshBlock } from "./fresh-block.ts";

/** One solution of K x = λ B x with λ > 0, scaled to xᵀ K x = 1. */
export interface Pair {
  readonly lambda: number;
  readonly vector: Float64Array;
  /** ‖B x − µ K x‖ / µ with µ = 1/λ, in the norm of K⁻¹: the relative error of λ is about its square. */
  readonly residual: number;
}

/** Residuals of this size leave eigenvalues exact to about twelve digits. */
const RESIDUAL_ALLOWED = 1e-6;
/** Basis size at which the best directions are kept and the rest dropped. */
const basisLimit = (count: number): number => 40 + 4 * count;
const MOST_STEPS = 400;
/** Eigenvalues this close count as one place when the pairs are counted. */
const CLUSTER = 1e-4;
/**
 * Modes of a long frame of like bays crowd together, and their vectors part slowly. From this step on, and every so often, it is
 * seen whether their values are already known: Ritz values lie on or above them, and counting says how far below they may lie.
 */
const CROWDED_FROM = 40;
const LOOK_EVERY = 10;
const KNOWN = 1e-6;

/**
 * The `count` lowest positive eigenvalues of K x = λ B x: K positive definite and factorised, B symmetric of any sign.
 * Block Krylov space of K⁻¹ B in the inner product of K with full orthogonalisation, Rayleigh-Ritz on the whole basis and
 * restarts that keep the best directions (thick-restart Lanczos, Wu and Simon 2000, by blocks).
 * `countBelow(λ)` says how many eigenvalues in (0, λ) there really are (Sylvester's law of inertia on K − λ B): a space
 * that has not seen them all is given fresh directions. Where many lie close together, pairs come back once their values are
 * known to 1e-6; their vectors may then be mixtures of close modes, as `residual` tells. `allowed` is the residual asked for. Fewer pairs come back when there are fewer.
 * Throws RangeError when it does not converge.
 */
export function lowestPairs(
  K: SymmetricMatrix,
  factor: Factor,
  B: SymmetricMatrix,
  count: number,
  countBelow: (lambda: number) => number,
  allowed = RESIDUAL_ALLOWED,
): Pair[] {
  const basis = emptyBasis(K);
  let round = 0;
  const act = (vectors: Float64Array, k: number): Float64Array => factor.solve(multiply(B, vectors, k), k);
  let block = freshBlock(factor.n, act, round++);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (append(basis, block) === 0 && append(basis, freshBlock(factor.n, act, round++)) === 0) {
      return wanted(basis, ritz(basis), count); // the space holds everything that B acts on
    }
    const { vectors, count: added } = withoutImages(basis);
    const forces = multiply(B, vectors, added);
    const answers = factor.solve(forces, added);
    setImages(basis, forces, answers);
    const eigen = ritz(basis);
    const pairs = wanted(basis, eigen, count);
    const converged = pairs.length === count && pairs.every(({ residual }) => residual <= allowed);
    if (converged && complete(pairs, countBelow)) return pairs;
    const looks = step >= CROWDED_FROM && step % LOOK_EVERY === 0 && pairs.length === count;
    if (!converged && looks && enclosed(pairs, countBelow)) return pairs;
    block = converged ? freshBlock(factor.n, act, round++) : answers;
    if (basis.directions.length + BLOCK > basisLimit(count)) keepBest(basis, eigen, count + 2 * BLOCK);
  }
  throw new RangeError(`the ${count} lowest modes did not converge`);
}

/** True when no eigenvalue below the last pair (or the cluster it is in) was missed. */
function complete(pairs: readonly Pair[], countBelow: (lambda: number) => number): boolean {
  const last = pairs[pairs.length - 1];
  if (!last) return true;
  const sure = last.lambda * (1 - CLUSTER);
  return countBelow(sure) <= pairs.filter(({ lambda }) => lambda < sure).length;
}

/** True when the value of every pair is known to a share of KNOWN, whatever its vector. */
function enclosed(pairs: readonly Pair[], countBelow: (lambda: number) => number): boolean {
  // The last is the slowest: where it is not known the others need no look.
  return pairs.every((_, i) => {
    const k = pairs.length - 1 - i;
    return countBelow((pairs[k]?.lambda ?? 0) * (1 - KNOWN)) <= k;
  });
}

const ritz = (basis: Basis): DenseEigen => denseSymmetricEigen(projected(basis), basis.directions.length);

/** Eigenvalues of K⁻¹ B below this fraction of the largest are rounding of zero. */
const ZERO = 1e-13;

function wanted(basis: Basis, { values, vectors }: DenseEigen, count: number): Pair[] {
  const m = basis.directions.length;
  let largest = 0;
  for (const mu of values) largest = Math.max(largest, Math.abs(mu));
  const pairs: Pair[] = [];
  for (let i = 0; i < m && pairs.length < count; i++) {
    const mu = values[i] as number;
    if (!(mu > ZERO * largest)) break;
    const own = vectors.subarray(i * m, (i + 1) * m);
    pairs.push({ lambda: 1 / mu, vector: combine(basis, own), residual: residualOf(basis, own, mu) });
  }
  return pairs;
}
