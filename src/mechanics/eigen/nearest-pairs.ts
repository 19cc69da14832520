import type { Factor } from "../sparse/factorise.ts";
import type { SymmetricMatrix } from "../sparse/symmetric-matrix.ts";
import { multiply } from "../sparse/symmetric-matrix.ts";
import { append, combine, emptyBasis, keepBest, projected, residualOf, setImages, withoutImages } from "./basis.ts";
import { type DenseEigen, denseSymmetricEigen } from "./dense-symmetric.ts";
import { BLOCK, freshBlock } from "./fresh-block.ts";

/** One solution of K x = λ M x, scaled to xᵀ M x = 1. */
export interface NearPair {
  readonly lambda: number;
  readonly vector: Float64Array;
  /** ‖S x − θ x‖ / |θ| with S = (K − σ M)⁻¹ M, θ = 1/(λ − σ), in the norm of M: relative to the distance from σ. */
  readonly residual: number;
}

/** Residuals of this size leave λ exact to about twelve digits of its distance from σ. */
const RESIDUAL_ALLOWED = 1e-6;
const basisLimit = (count: number): number => 40 + 4 * count;
const MOST_STEPS = 200;
/** Eigenvalues this close to the last distance count as one place with it when the pairs are counted. */
const CLUSTER = 1e-4;

/** Largest size first: the eigenvalues nearest to σ. */
function bySize({ values, vectors }: DenseEigen): DenseEigen {
  const n = values.length;
  const order = Array.from({ length: n }, (_, i) => i).sort(
    (i, j) => Math.abs(values[j] as number) - Math.abs(values[i] as number) || i - j,
  );
  const sorted = new Float64Array(n * n);
  order.forEach((from, to) => {
    sorted.set(vectors.subarray(from * n, from * n + n), to * n);
  });
  return { values: Float64Array.from(order, (i) => values[i] as number), vectors: sorted };
}

/**
 * The `count` eigenvalues of K x = λ M x nearest to σ: M positive semi-definite, `shifted` the factor of K − σ M. Block Krylov space of
 * S = (K − σ M)⁻¹ M in the inner product of M with full orthogonalisation (Ericsson and Ruhe 1980; Nour-Omid, Parlett, Ericsson and
 * Jensen 1987 for a singular M), Rayleigh-Ritz on the whole basis, restarts that keep the nearest directions.
 * `countWithin(r)` says how many eigenvalues really lie nearer to σ than r (Sylvester's law of inertia on both sides): a space that has not
 * seen them all is given fresh directions. Fewer pairs come back when there are fewer. Throws RangeError when it does not converge.
 */
export function nearestPairs(
  M: SymmetricMatrix,
  shifted: Factor,
  sigma: number,
  count: number,
  countWithin: (distance: number) => number,
): NearPair[] {
  const act = (vectors: Float64Array, k: number): Float64Array => shifted.solve(multiply(M, vectors, k), k);
  const basis = emptyBasis(M);
  let round = 0;
  let block = freshBlock(shifted.n, act, round++);
  for (let step = 0; step < MOST_STEPS; step++) {
    const stuck = append(basis, block) === 0 && append(basis, freshBlock(shifted.n, act, round++)) === 0;
    const { vectors, count: added } = withoutImages(basis);
    const answers = act(vectors, added);
    setImages(basis, multiply(M, answers, added), answers);
    const m = basis.directions.length;
    const eigen = bySize(denseSymmetricEigen(projected(basis), m));
    const pairs: NearPair[] = [];
    for (let i = 0; i < Math.min(m, count); i++) {
      const theta = eigen.values[i] as number;
      if (theta === 0) break;
      const own = eigen.vectors.subarray(i * m, (i + 1) * m);
      pairs.push({ lambda: sigma + 1 / theta, vector: combine(basis, own), residual: residualOf(basis, own, theta) });
    }
    if (stuck) return pairs; // the space holds everything that M acts on
    const converged = pairs.length === count && pairs.every(({ residual }) => residual <= RESIDUAL_ALLOWED);
    if (converged && complete(pairs, sigma, countWithin)) return pairs;
    block = converged ? freshBlock(shifted.n, act, round++) : answers;
    if (m + BLOCK > basisLimit(count)) keepBest(basis, eigen, count + 2 * BLOCK);
  }
  throw new RangeError(`the ${count} modes nearest to ${Math.sqrt(Math.max(sigma, 0))} rad/s did not converge`);
}

/** True when no eigenvalue nearer than the last pair (or the cluster it is in) was missed. */
function complete(pairs: readonly NearPair[], sigma: number, countWithin: (distance: number) => number): boolean {
  const sure = Math.abs((pairs[pairs.length - 1]?.lambda ?? sigma) - sigma) * (1 - CLUSTER);
  return countWithin(sure) <= pairs.filter(({ lambda }) => Math.abs(lambda - sigma) < sure).length;
}
