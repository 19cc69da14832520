/**
 * A symmetric matrix of n unknowns: the lower triangle with its diagonal, compressed by columns.
 * Column j holds rows `rowIndex[colStart[j]] … rowIndex[colStart[j + 1] - 1]`, ascending and without repeats.
 * Zeros may be stored: two matrices assembled from the same blocks have the same pattern whatever their values.
 */
export interface SymmetricMatrix {
  readonly n: number;
  readonly colStart: Int32Array;
  readonly rowIndex: Int32Array;
  readonly value: Float64Array;
}

/** K·x for k vectors, column by column (n × k in, n × k out). */
export function multiply(matrix: SymmetricMatrix, x: Float64Array, k = 1): Float64Array {
  const { n, colStart, rowIndex, value } = matrix;
  if (x.length !== n * k) throw new RangeError(`${x.length} values given where ${k} vectors of ${n} are needed`);
  const y = new Float64Array(n * k);
  for (let base = 0; base < n * k; base += n) {
    for (let j = 0; j < n; j++) {
      const xj = x[base + j] as number;
      let sum = 0;
      for (let e = colStart[j] as number, end = colStart[j + 1] as number; e < end; e++) {
        const i = rowIndex[e] as number;
        const a = value[e] as number;
        sum += a * (x[base + i] as number);
        if (i !== j) y[base + i] = (y[base + i] as number) + a * xj;
      }
      y[base + j] = (y[base + j] as number) + sum;
    }
  }
  return y;
}

/** |K|·|x| for k vectors: the size that rounding errors of K·x are measured by. */
export function multiplyAbsolute(matrix: SymmetricMatrix, x: Float64Array, k = 1): Float64Array {
  return multiply({ ...matrix, value: matrix.value.map(Math.abs) }, x.map(Math.abs), k);
}

/** What the pivot of each unknown is measured by: |diagonal|, or the largest |entry| of its column where that is zero. */
export function pivotScale(matrix: SymmetricMatrix): Float64Array {
  const { n, colStart, rowIndex, value } = matrix;
  const scale = new Float64Array(n);
  let missing = false;
  for (let j = 0; j < n; j++) {
    const e = colStart[j] as number;
    if (e < (colStart[j + 1] as number) && rowIndex[e] === j) scale[j] = Math.abs(value[e] as number);
    if (scale[j] === 0) missing = true;
  }
  if (!missing) return scale;
  const largest = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    for (let e = colStart[j] as number, end = colStart[j + 1] as number; e < end; e++) {
      const i = rowIndex[e] as number;
      const size = Math.abs(value[e] as number);
      if (size > (largest[i] as number)) largest[i] = size;
      if (size > (largest[j] as number)) largest[j] = size;
    }
  }
  return scale.map((size, j) => (size > 0 ? size : (largest[j] as number)));
}
