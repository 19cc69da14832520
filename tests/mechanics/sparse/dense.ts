import type { ElementBlock } from "../../../src/mechanics/sparse/assemble.ts";
import type { SymmetricMatrix } from "../../../src/mechanics/sparse/symmetric-matrix.ts";

/** The whole matrix as rows, both triangles. */
export function dense(matrix: SymmetricMatrix): number[][] {
  const rows = Array.from({ length: matrix.n }, () => new Array<number>(matrix.n).fill(0));
  for (let j = 0; j < matrix.n; j++) {
    for (let e = matrix.colStart[j] ?? 0; e < (matrix.colStart[j + 1] ?? 0); e++) {
      const i = matrix.rowIndex[e] ?? 0;
      const value = matrix.value[e] ?? 0;
      (rows[i] as number[])[j] = value;
      (rows[j] as number[])[i] = value;
    }
  }
  return rows;
}

/** The plain textbook L·D·Lᵀ solve (Golub, Van Loan, Matrix Computations, 4.1), on a copy. */
export function solveDense(
  rows: readonly (readonly number[])[],
  b: readonly number[],
): { x: number[]; pivots: number[] } {
  const n = rows.length;
  const l = rows.map((row) => [...row]);
  const x = [...b];
  const get = (i: number, j: number): number => l[i]?.[j] ?? Number.NaN;
  const pivots: number[] = [];
  for (let k = 0; k < n; k++) {
    pivots.push(get(k, k));
    for (let i = k + 1; i < n; i++) {
      const factor = get(i, k) / get(k, k);
      for (let j = k; j < n; j++) (l[i] as number[])[j] = get(i, j) - factor * get(k, j);
      x[i] = (x[i] ?? 0) - factor * (x[k] ?? 0);
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) x[i] = (x[i] ?? 0) - get(i, j) * (x[j] ?? 0);
    x[i] = (x[i] ?? 0) / get(i, i);
  }
  return { x, pivots };
}

/** A repeatable stream of numbers in [−1, 1): mulberry32. */
export function numbers(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 31 - 1;
  };
}

/** Springs between pairs of unknowns and some to ground: positive definite where each part is tied to ground. */
export function springs(pairs: readonly (readonly [number, number, number])[]): ElementBlock[] {
  return pairs.map(([a, b, k]) =>
    b < 0 ? { unknowns: [a], values: [k] } : { unknowns: [a, b], values: [k, -k, -k, k] },
  );
}

export function largestDifference(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let largest = a.length === b.length ? 0 : Number.POSITIVE_INFINITY;
  for (let i = 0; i < a.length; i++) largest = Math.max(largest, Math.abs((a[i] ?? Number.NaN) - (b[i] ?? Number.NaN)));
  return largest;
}

export function largest(a: ArrayLike<number>): number {
  return largestDifference(a, new Float64Array(a.length));
}
