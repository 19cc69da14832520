import type { SymmetricMatrix } from "../sparse/symmetric-matrix.ts";
import { multiply } from "../sparse/symmetric-matrix.ts";
import type { DenseEigen } from "./dense-symmetric.ts";

/** One vector of the basis with what K, B and K⁻¹ B make of it; the last two are empty until they are known. */
interface Direction {
  readonly v: Float64Array;
  readonly kv: Float64Array;
  bv: Float64Array;
  w: Float64Array;
}

/** A basis orthonormal in the inner product of K. `projection[i][j]` is vᵢ · B vⱼ for j ≤ i, as far as images are known. */
export interface Basis {
  readonly K: SymmetricMatrix;
  readonly n: number;
  directions: Direction[];
  projection: number[][];
}

export const emptyBasis = (K: SymmetricMatrix): Basis => ({ K, n: K.n, directions: [], projection: [] });

/** A new direction that keeps less than this of its length lies in the space already. */
const DEPENDENT = 1e-9;
const UNKNOWN = new Float64Array(0);

function dotOf(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function addScaled(to: Float64Array, factor: number, from: Float64Array): void {
  for (let i = 0; i < to.length; i++) to[i] = (to[i] as number) + factor * (from[i] as number);
}

/**
 * Adds what is new in the vectors (Gram-Schmidt, done twice); returns how many directions that are. Their forces K v are
 * formed anew from v: carried along instead, the two would drift apart by the digits that each remainder loses.
 */
export function append(basis: Basis, vectors: Float64Array): number {
  const { K, n } = basis;
  let added = 0;
  for (let at = 0; at < vectors.length && basis.directions.length < n; at += n) {
    const v = vectors.slice(at, at + n);
    const before = dotOf(v, multiply(K, v));
    if (!(before > 0)) continue;
    for (let pass = 0; pass < 2; pass++) {
      for (const d of basis.directions) addScaled(v, -dotOf(d.kv, v), d.v);
    }
    const kv = multiply(K, v);
    const left = dotOf(v, kv);
    if (!(left > DEPENDENT ** 2 * before)) continue;
    const scale = 1 / Math.sqrt(left);
    basis.directions.push({ v: v.map((x) => x * scale), kv: kv.map((x) => x * scale), bv: UNKNOWN, w: UNKNOWN });
    added++;
  }
  return added;
}

/** The directions whose images are not known yet, one after the other. */
export function withoutImages(basis: Basis): { readonly vectors: Float64Array; readonly count: number } {
  const own = basis.directions.filter(({ bv }) => bv === UNKNOWN);
  const vectors = new Float64Array(basis.n * own.length);
  own.forEach(({ v }, i) => {
    vectors.set(v, i * basis.n);
  });
  return { vectors, count: own.length };
}

/** Takes B v and K⁻¹ B v of those directions, in their order. */
export function setImages(basis: Basis, bv: Float64Array, w: Float64Array): void {
  let next = 0;
  basis.directions.forEach((d, i) => {
    if (d.bv !== UNKNOWN) return;
    d.bv = bv.slice(next * basis.n, (next + 1) * basis.n);
    d.w = w.slice(next * basis.n, (next + 1) * basis.n);
    next++;
    basis.projection[i] = basis.directions.slice(0, i + 1).map(({ v }) => dotOf(v, d.bv));
  });
}

/** Vᵀ B V by rows. */
export function projected({ projection }: Basis): Float64Array {
  const m = projection.length;
  const t = new Float64Array(m * m);
  projection.forEach((row, i) => {
    row.forEach((value, j) => {
      t[i * m + j] = value;
      t[j * m + i] = value;
    });
  });
  return t;
}

function sum(basis: Basis, coefficients: Float64Array, pick: (d: Direction) => Float64Array): Float64Array {
  const out = new Float64Array(basis.n);
  basis.directions.forEach((d, i) => {
    addScaled(out, coefficients[i] as number, pick(d));
  });
  return out;
}

export const combine = (basis: Basis, coefficients: Float64Array): Float64Array => sum(basis, coefficients, (d) => d.v);

/** ‖K⁻¹ B x − µ x‖ / |µ| in the norm of K, for x combined from the basis with ‖x‖ = 1. */
export function residualOf(basis: Basis, coefficients: Float64Array, mu: number): number {
  const r = sum(basis, coefficients, (d) => d.w);
  const kr = sum(basis, coefficients, (d) => d.bv);
  addScaled(r, -mu, combine(basis, coefficients));
  addScaled(
    kr,
    -mu,
    sum(basis, coefficients, (d) => d.kv),
  );
  return Math.sqrt(Math.max(dotOf(r, kr), 0)) / Math.abs(mu);
}

/** Replaces the basis by its `keep` directions of the largest values. */
export function keepBest(basis: Basis, { values, vectors }: DenseEigen, keep: number): void {
  const m = basis.directions.length;
  const kept = Array.from({ length: Math.min(keep, m) }, (_, i): Direction => {
    const coefficients = vectors.subarray(i * m, (i + 1) * m);
    return {
      v: combine(basis, coefficients),
      kv: sum(basis, coefficients, (d) => d.kv),
      bv: sum(basis, coefficients, (d) => d.bv),
      w: sum(basis, coefficients, (d) => d.w),
    };
  });
  basis.directions = kept;
  basis.projection = kept.map((_, i) => Array.from({ length: i + 1 }, (_, j) => (i === j ? (values[i] as number) : 0)));
}
