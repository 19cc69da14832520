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
  const row = new Int32Array(column[n] as number);
  const value = new Float64Array(column[n] as number);
  const fill = column.slice();
  const x = new Float64Array(n);
  const pattern = new Int32Array(n);
  const mark = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    const top = reach(a, k, parent, mark, pattern);
    let d = 0;
    for (let p = a.column[k] as number; p < (a.column[k + 1] as number); p++) {
      const i = a.row[p] as number;
      if (i === k) d += a.value[p] as number;
      else x[i] = (x[i] as number) + (a.value[p] as number);
    }
    for (let s = top; s < n; s++) {
      const i = pattern[s] as number;
      const l = (x[i] as number) / (value[column[i] as number] as number);
      x[i] = 0;
      const end = fill[i] as number;
      for (let p = (column[i] as number) + 1; p < end; p++) {
        const r = row[p] as number;
        x[r] = (x[r] as number) - (value[p] as number) * l;
      }
      d -= l * l;
      row[end] = k;
      value[end] = l;
      fill[i] = end + 1;
    }
    if (!(d > 0)) throw new RangeError("section: the mesh is too distorted to solve");
    const p = fill[k] as number;
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
    const first = column[j] as number;
    const xj = (x[j] as number) / (value[first] as number);
    x[j] = xj;
    for (let p = first + 1; p < (column[j + 1] as number); p++) {
      const i = row[p] as number;
      x[i] = (x[i] as number) - (value[p] as number) * xj;
    }
  }
  for (let j = size - 1; j >= 0; j--) {
    const first = column[j] as number;
    let sum = x[j] as number;
    for (let p = first + 1; p < (column[j + 1] as number); p++)
      sum -= (value[p] as number) * (x[row[p] as number] as number);
    x[j] = sum / (value[first] as number);
  }
  return x;
}

function eliminationTree(a: SymmetricMatrix): Int32Array {
  const parent = new Int32Array(a.size).fill(-1);
  const ancestor = new Int32Array(a.size).fill(-1);
  for (let k = 0; k < a.size; k++) {
    for (let p = a.column[k] as number; p < (a.column[k + 1] as number); p++) {
      let i = a.row[p] as number;
      while (i >= 0 && i < k) {
        const above = ancestor[i] as number;
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
    start[k + 1] = (start[k + 1] as number) + 1;
    for (let p = a.column[k] as number; p < (a.column[k + 1] as number); p++) {
      for (let i = a.row[p] as number; (mark[i] as number) !== k; i = parent[i] as number) {
        mark[i] = k;
        start[i + 1] = (start[i + 1] as number) + 1;
      }
    }
  }
  for (let k = 0; k < n; k++) start[k + 1] = (start[k + 1] as number) + (start[k] as number);
  return start;
}

/** Writes the columns that row k of L touches, in an order that respects the tree, to the end of `pattern`; returns where they begin. */
function reach(a: SymmetricMatrix, k: number, parent: Int32Array, mark: Int32Array, pattern: Int32Array): number {
  let top = a.size;
  mark[k] = k;
  for (let p = a.column[k] as number; p < (a.column[k + 1] as number); p++) {
    let length = 0;
    for (let i = a.row[p] as number; (mark[i] as number) !== k; i = parent[i] as number) {
      pattern[length++] = i;
      mark[i] = k;
    }
    while (length > 0) pattern[--top] = pattern[--length] as number;
  }
  return top;
}
