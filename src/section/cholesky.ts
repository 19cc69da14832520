import { int, real } from "./read.ts";

/** A symmetric matrix: the entries with row ≤ column, column by column, rows in any order. */
export interface SymmetricMatrix {
  readonly size: number;
  /** Where each column starts in `row` and `value`; one more entry than columns. */
  readonly column: Int32Array;
  readonly row: Int32Array;
  readonly value: Float64Array;
}

/** A lower triangular factor L of A = L·Lᵀ, column by column, the diagonal first. */
export interface Factor {
  readonly size: number;
  readonly column: Int32Array;
  readonly row: Int32Array;
  readonly value: Float64Array;
}

/**
 * Sparse Cholesky factor of a positive definite matrix, row by row along the elimination tree
 * (T. A. Davis, "Direct methods for sparse linear systems", SIAM 2006, ch. 4).
 * Throws RangeError when a pivot is not positive.
 */
export function factorise(a: SymmetricMatrix): Factor {
  const n = a.size;
  const parent = eliminationTree(a);
  const column = columnStarts(a, parent);
  const row = new Int32Array(int(column, n));
  const value = new Float64Array(int(column, n));
  const fill = column.slice();
  const x = new Float64Array(n);
  const pattern = new Int32Array(n);
  const mark = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    const top = reach(a, k, parent, mark, pattern);
    let d = 0;
    for (let p = int(a.column, k); p < int(a.column, k + 1); p++) {
      const i = int(a.row, p);
      if (i === k) d += real(a.value, p);
      else x[i] = real(x, i) + real(a.value, p);
    }
    for (let s = top; s < n; s++) {
      const i = int(pattern, s);
      const l = real(x, i) / real(value, int(column, i));
      x[i] = 0;
      const end = int(fill, i);
      for (let p = int(column, i) + 1; p < end; p++) {
        const r = int(row, p);
        x[r] = real(x, r) - real(value, p) * l;
      }
      d -= l * l;
      row[end] = k;
      value[end] = l;
      fill[i] = end + 1;
    }
    if (!(d > 0)) throw new RangeError("section: the mesh is too distorted to solve");
    const p = int(fill, k);
    row[p] = k;
    value[p] = Math.sqrt(d);
    fill[k] = p + 1;
  }
  return { size: n, column, row, value };
}

/** Solves L·Lᵀ·x = b. */
export function solve({ size, column, row, value }: Factor, b: Float64Array): Float64Array {
  const x = b.slice();
  for (let j = 0; j < size; j++) {
    const first = int(column, j);
    const xj = real(x, j) / real(value, first);
    x[j] = xj;
    for (let p = first + 1; p < int(column, j + 1); p++) {
      const i = int(row, p);
      x[i] = real(x, i) - real(value, p) * xj;
    }
  }
  for (let j = size - 1; j >= 0; j--) {
    const first = int(column, j);
    let sum = real(x, j);
    for (let p = first + 1; p < int(column, j + 1); p++) sum -= real(value, p) * real(x, int(row, p));
    x[j] = sum / real(value, first);
  }
  return x;
}

function eliminationTree(a: SymmetricMatrix): Int32Array {
  const parent = new Int32Array(a.size).fill(-1);
  const ancestor = new Int32Array(a.size).fill(-1);
  for (let k = 0; k < a.size; k++) {
    for (let p = int(a.column, k); p < int(a.column, k + 1); p++) {
      let i = int(a.row, p);
      while (i >= 0 && i < k) {
        const above = int(ancestor, i);
        ancestor[i] = k;
        if (above < 0) parent[i] = k;
        i = above;
      }
    }
  }
  return parent;
}

/** Counts the entries of every column of L by walking each row's pattern once. */
function columnStarts(a: SymmetricMatrix, parent: Int32Array): Int32Array {
  const n = a.size;
  const start = new Int32Array(n + 1);
  const mark = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    mark[k] = k;
    start[k + 1] = int(start, k + 1) + 1;
    for (let p = int(a.column, k); p < int(a.column, k + 1); p++) {
      for (let i = int(a.row, p); int(mark, i) !== k; i = int(parent, i)) {
        mark[i] = k;
        start[i + 1] = int(start, i + 1) + 1;
      }
    }
  }
  for (let k = 0; k < n; k++) start[k + 1] = int(start, k + 1) + int(start, k);
  return start;
}

/** Writes the columns that row k of L touches, in an order that respects the tree, to the end of `pattern`; returns where they begin. */
function reach(a: SymmetricMatrix, k: number, parent: Int32Array, mark: Int32Array, pattern: Int32Array): number {
  let top = a.size;
  mark[k] = k;
  for (let p = int(a.column, k); p < int(a.column, k + 1); p++) {
    let length = 0;
    for (let i = int(a.row, p); int(mark, i) !== k; i = int(parent, i)) {
      pattern[length++] = i;
      mark[i] = k;
    }
    while (length > 0) pattern[--top] = int(pattern, --length);
  }
  return top;
}
