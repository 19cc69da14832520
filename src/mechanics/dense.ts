/** LU factors of a small dense matrix by rows with partial pivoting, in place; returns the row order. */
export interface DenseFactor {
  readonly n: number;
  readonly lu: Float64Array;
  readonly order: Int32Array;
  /** Smallest |pivot| beside the largest |entry| its row had: near zero for a singular matrix. */
  readonly smallestPivot: number;
}

export function denseFactor(matrix: Float64Array, n: number): DenseFactor {
  const lu = matrix.slice();
  const order = Int32Array.from({ length: n }, (_, i) => i);
  const scale = Float64Array.from({ length: n }, (_, i) => {
    let largest = 0;
    for (let j = 0; j < n; j++) largest = Math.max(largest, Math.abs(lu[i * n + j] as number));
    return largest || 1;
  });
  let smallestPivot = Infinity;
  for (let k = 0; k < n; k++) {
    let best = k;
    const size = (row: number): number => Math.abs(lu[row * n + k] as number) / (scale[row] as number);
    for (let i = k + 1; i < n; i++) if (size(i) > size(best)) best = i;
    smallestPivot = Math.min(smallestPivot, size(best));
    if (best !== k) {
      swapRows(lu, n, k, best);
      [order[k], order[best]] = [order[best] as number, order[k] as number];
      [scale[k], scale[best]] = [scale[best] as number, scale[k] as number];
    }
    const pivot = lu[k * n + k] as number;
    if (pivot === 0) continue;
    for (let i = k + 1; i < n; i++) {
      const factor = (lu[i * n + k] as number) / pivot;
      lu[i * n + k] = factor;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) lu[i * n + j] = (lu[i * n + j] as number) - factor * (lu[k * n + j] as number);
    }
  }
  return { n, lu, order, smallestPivot };
}

function swapRows(a: Float64Array, n: number, i: number, j: number): void {
  const row = a.slice(i * n, i * n + n);
  a.copyWithin(i * n, j * n, j * n + n);
  a.set(row, j * n);
}

export function denseSolve({ n, lu, order }: DenseFactor, b: Float64Array): Float64Array {
  const x = Float64Array.from({ length: n }, (_, i) => b[order[i] as number] as number);
  for (let i = 0; i < n; i++) {
    let sum = x[i] as number;
    for (let j = 0; j < i; j++) sum -= (lu[i * n + j] as number) * (x[j] as number);
    x[i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i] as number;
    for (let j = i + 1; j < n; j++) sum -= (lu[i * n + j] as number) * (x[j] as number);
    x[i] = sum / (lu[i * n + i] as number);
  }
  return x;
}
