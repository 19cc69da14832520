/** Eigenvalues in descending order with orthonormal eigenvectors (vector i is the i-th row of `vectors`). */
export interface DenseEigen {
  readonly values: Float64Array;
  readonly vectors: Float64Array;
}

/** Sweeps until the off-diagonal part is at rounding level; Jacobi's method converges quadratically in 6 to 10. */
const MOST_SWEEPS = 60;

/**
 * All eigenpairs of a symmetric n × n matrix (by rows) by cyclic Jacobi rotations
 * (Golub and Van Loan, Matrix Computations, section 8.5).
 */
export function denseSymmetricEigen(matrix: Float64Array, n: number): DenseEigen {
  const a = matrix.slice();
  const v = new Float64Array(n * n);
  for (let i = 0; i < n; i++) v[i * n + i] = 1;
  let total = 0;
  for (const value of a) total += value * value;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let off = 0;
    for (let p = 0; p < n; p++) for (let q = 0; q < p; q++) off += (a[p * n + q] as number) ** 2;
    if (off <= Number.EPSILON ** 2 * total) break;
    for (let p = 1; p < n; p++) for (let q = 0; q < p; q++) rotate(a, v, n, p, q);
  }
  const order = Array.from({ length: n }, (_, i) => i).sort(
    (i, j) => (a[j * n + j] as number) - (a[i * n + i] as number),
  );
  const vectors = new Float64Array(n * n);
  order.forEach((from, to) => {
    vectors.set(v.subarray(from * n, from * n + n), to * n);
  });
  return { values: Float64Array.from(order, (i) => a[i * n + i] as number), vectors };
}

function rotate(a: Float64Array, v: Float64Array, n: number, p: number, q: number): void {
  const apq = a[p * n + q] as number;
  if (apq === 0) return;
  const theta = ((a[q * n + q] as number) - (a[p * n + p] as number)) / (2 * apq);
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  const turn = (m: Float64Array, i: number, j: number): void => {
    const [x, y] = [m[i] as number, m[j] as number];
    m[i] = c * x - s * y;
    m[j] = s * x + c * y;
  };
  for (let k = 0; k < n; k++) turn(a, k * n + p, k * n + q);
  for (let k = 0; k < n; k++) turn(a, p * n + k, q * n + k);
  for (let k = 0; k < n; k++) turn(v, p * n + k, q * n + k);
}
