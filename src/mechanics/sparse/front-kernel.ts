/**
 * C −= A·Bᵀ on blocks of three rows by three columns kept in nine local variables, the pace of the whole factorisation.
 * Rows are `stride` numbers apart and hold `depth` numbers in a row; measured in V8, wider blocks spill and are slower.
 */
export const TILE = 3;

/**
 * Subtracts the products of `tiles` × 3 rows of a, one below the other, with the same three rows of b from as many rows of c,
 * three columns wide. Places and strides count numbers.
 */
export type SubtractTiles = (
  a: Float64Array,
  aAt: number,
  aStride: number,
  b: Float64Array,
  bAt: number,
  bStride: number,
  depth: number,
  c: Float64Array,
  cAt: number,
  cStride: number,
  tiles: number,
) => void;

export const subtractTiles: SubtractTiles = (a, aAt, aStride, b, bAt, bStride, depth, c, cAt, cStride, tiles) => {
  for (let t = 0; t < tiles; t++) {
    const down = t * TILE;
    subtractTile(a, aAt + down * aStride, aStride, b, bAt, bStride, depth, c, cAt + down * cStride, cStride);
  }
};

/** c[cAt …] (3 × 3, rows cStride apart) −= three rows of a times three rows of b. */
function subtractTile(
  a: Float64Array,
  aAt: number,
  aStride: number,
  b: Float64Array,
  bAt: number,
  bStride: number,
  depth: number,
  c: Float64Array,
  cAt: number,
  cStride: number,
): void {
  let a0 = aAt | 0;
  let a1 = (a0 + aStride) | 0;
  let a2 = (a1 + aStride) | 0;
  let b0 = bAt | 0;
  let b1 = (b0 + bStride) | 0;
  let b2 = (b1 + bStride) | 0;
  const end = (a0 + depth) | 0;
  let c00 = 0;
  let c01 = 0;
  let c02 = 0;
  let c10 = 0;
  let c11 = 0;
  let c12 = 0;
  let c20 = 0;
  let c21 = 0;
  let c22 = 0;
  while (a0 < end) {
    const y0 = b[b0] as number;
    const y1 = b[b1] as number;
    const y2 = b[b2] as number;
    const x0 = a[a0] as number;
    c00 += x0 * y0;
    c01 += x0 * y1;
    c02 += x0 * y2;
    const x1 = a[a1] as number;
    c10 += x1 * y0;
    c11 += x1 * y1;
    c12 += x1 * y2;
    const x2 = a[a2] as number;
    c20 += x2 * y0;
    c21 += x2 * y1;
    c22 += x2 * y2;
    a0 = (a0 + 1) | 0;
    a1 = (a1 + 1) | 0;
    a2 = (a2 + 1) | 0;
    b0 = (b0 + 1) | 0;
    b1 = (b1 + 1) | 0;
    b2 = (b2 + 1) | 0;
  }
  const r0 = cAt | 0;
  const r1 = (r0 + cStride) | 0;
  const r2 = (r1 + cStride) | 0;
  c[r0] = (c[r0] as number) - c00;
  c[r0 + 1] = (c[r0 + 1] as number) - c01;
  c[r0 + 2] = (c[r0 + 2] as number) - c02;
  c[r1] = (c[r1] as number) - c10;
  c[r1 + 1] = (c[r1 + 1] as number) - c11;
  c[r1 + 2] = (c[r1 + 2] as number) - c12;
  c[r2] = (c[r2] as number) - c20;
  c[r2 + 1] = (c[r2 + 1] as number) - c21;
  c[r2 + 2] = (c[r2 + 2] as number) - c22;
}

/** The same for the edges, where fewer than three rows or columns are left. */
export function subtractEdge(
  a: Float64Array,
  aAt: number,
  aStride: number,
  rows: number,
  b: Float64Array,
  bAt: number,
  bStride: number,
  columns: number,
  depth: number,
  c: Float64Array,
  cAt: number,
  cStride: number,
): void {
  for (let i = 0; i < rows; i++) {
    const from = (aAt + i * aStride) | 0;
    for (let j = 0; j < columns; j++) {
      const other = (bAt + j * bStride) | 0;
      let sum = 0;
      for (let k = 0; k < depth; k++) sum += (a[from + k] as number) * (b[other + k] as number);
      const place = (cAt + i * cStride + j) | 0;
      c[place] = (c[place] as number) - sum;
    }
  }
}
