import { multiply, multiplyAbsolute, type SymmetricMatrix } from "./symmetric-matrix.ts";

/** Vectors that go through the matrix in one sweep. */
export const TOGETHER = 4;

/** K·x, and |K|·|x|: the size that rounding errors of K·x are measured by. Column by column. */
export interface Products {
  readonly product: Float64Array;
  readonly size: Float64Array;
}

/** Room for what goes through a matrix: vectors and both their products by rows of `TOGETHER`, and the products column by column. */
export interface Room extends Products {
  readonly own: Float64Array;
  readonly columns: Products;
}

export function roomFor({ n }: SymmetricMatrix): Room {
  const make = (): Float64Array => new Float64Array(TOGETHER * n);
  return { own: make(), product: make(), size: make(), columns: { product: make(), size: make() } };
}

/** Both products of `TOGETHER` vectors at most, in one sweep over the matrix; they lie in the room until it is used again. */
export function productsOf(matrix: SymmetricMatrix, x: Float64Array, room?: Room): Products {
  const k = x.length / matrix.n;
  if (k === 1) return { product: multiply(matrix, x), size: multiplyAbsolute(matrix, x) };
  const { n } = matrix;
  const { own, product, size, columns } = room ?? roomFor(matrix);
  if (k < TOGETHER) own.fill(0);
  product.fill(0);
  size.fill(0);
  for (let c = 0; c < k; c++) for (let i = 0; i < n; i++) own[TOGETHER * i + c] = x[c * n + i] as number;
  sweep(matrix, own, product, size);
  return { product: byColumn(product, n, k, columns.product), size: byColumn(size, n, k, columns.size) };
}

function byColumn(rows: Float64Array, n: number, k: number, out: Float64Array): Float64Array {
  const columns = out.subarray(0, n * k);
  for (let c = 0; c < k; c++) for (let i = 0; i < n; i++) columns[c * n + i] = rows[TOGETHER * i + c] as number;
  return columns;
}

/** Adds to both products, by rows of `TOGETHER`; every sum in the order in which `multiply` forms it. */
function sweep(
  { n, colStart, rowIndex, value }: SymmetricMatrix,
  x: Float64Array,
  product: Float64Array,
  size: Float64Array,
): void {
  for (let j = 0, own = 0; j < n; j++, own += TOGETHER) {
    const x0 = x[own] as number;
    const x1 = x[own + 1] as number;
    const x2 = x[own + 2] as number;
    const x3 = x[own + 3] as number;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    let t0 = 0;
    let t1 = 0;
    let t2 = 0;
    let t3 = 0;
    for (let e = colStart[j] as number, end = colStart[j + 1] as number; e < end; e++) {
      const i = rowIndex[e] as number;
      const a = value[e] as number;
      const to = TOGETHER * i;
      const p0 = a * (x[to] as number);
      const p1 = a * (x[to + 1] as number);
      const p2 = a * (x[to + 2] as number);
      const p3 = a * (x[to + 3] as number);
      s0 += p0;
      s1 += p1;
      s2 += p2;
      s3 += p3;
      t0 += Math.abs(p0);
      t1 += Math.abs(p1);
      t2 += Math.abs(p2);
      t3 += Math.abs(p3);
      if (i === j) continue;
      const q0 = a * x0;
      const q1 = a * x1;
      const q2 = a * x2;
      const q3 = a * x3;
      product[to] = (product[to] as number) + q0;
      product[to + 1] = (product[to + 1] as number) + q1;
      product[to + 2] = (product[to + 2] as number) + q2;
      product[to + 3] = (product[to + 3] as number) + q3;
      size[to] = (size[to] as number) + Math.abs(q0);
      size[to + 1] = (size[to + 1] as number) + Math.abs(q1);
      size[to + 2] = (size[to + 2] as number) + Math.abs(q2);
      size[to + 3] = (size[to + 3] as number) + Math.abs(q3);
    }
    product[own] = (product[own] as number) + s0;
    product[own + 1] = (product[own + 1] as number) + s1;
    product[own + 2] = (product[own + 2] as number) + s2;
    product[own + 3] = (product[own + 3] as number) + s3;
    size[own] = (size[own] as number) + t0;
    size[own + 1] = (size[own + 1] as number) + t1;
    size[own + 2] = (size[own + 2] as number) + t2;
    size[own + 3] = (size[own + 3] as number) + t3;
  }
}
