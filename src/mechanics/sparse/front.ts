import { type SubtractTiles, subtractEdge, TILE } from "./front-kernel.ts";

/** Decides about the pivot of a column: gives the value to divide by. */
export type TakePivot = (column: number, pivot: number) => number;

/** A front: its pivot columns, as many more rows, and the block it hands on. */
export interface Front {
  /** (columns + rows) × columns numbers from `start` on, row by row. */
  readonly panel: Float64Array;
  readonly start: number;
  readonly columns: number;
  readonly rows: number;
  /** rows × rows numbers from `blockStart` on, row by row, of which the lower triangle counts. */
  readonly block: Float64Array;
  readonly blockStart: number;
}

/**
 * Eliminates the pivot columns of a front. Its panel comes in as assembled and goes out as L (the unit diagonal not stored,
 * what lies right of it meaningless); what is eliminated is subtracted from its block. `diagonal[firstPlace + k]` receives
 * pivot k. `products` is room for W = L·D, laid out as the panel.
 */
export function eliminate(
  front: Front,
  products: Float64Array,
  diagonal: Float64Array,
  firstPlace: number,
  takePivot: TakePivot,
  subtractTiles: SubtractTiles,
): void {
  for (let j = 0; j < front.columns; j += TILE) {
    const width = Math.min(TILE, front.columns - j);
    bringUpToDate(front, j, width, products, subtractTiles);
    eliminatePivots(front, j, width, products, diagonal, firstPlace, takePivot);
    if (width === TILE) finishThree(front, j, products, diagonal, firstPlace);
    else finishFew(front, j, width, products, diagonal, firstPlace);
  }
  subtractLower(front, products, subtractTiles);
}

/** Subtracts from columns j … j + width − 1 what the columns before them eliminate, from row j down. */
function bringUpToDate(
  { panel, start, columns, rows }: Front,
  j: number,
  width: number,
  products: Float64Array,
  subtractTiles: SubtractTiles,
): void {
  if (j === 0) return;
  const height = columns + rows - j;
  const tiles = width === TILE ? Math.floor(height / TILE) : 0;
  const done = tiles * TILE;
  const w = j * columns;
  const l = start + w;
  subtractTiles(products, w, columns, panel, l, columns, j, panel, l + j, columns, tiles);
  const edge = w + done * columns;
  subtractEdge(products, edge, columns, height - done, panel, l, columns, width, j, panel, start + edge + j, columns);
}

/** The block of pivots j … j + width − 1: a plain elimination. */
function eliminatePivots(
  { panel, start, columns }: Front,
  j: number,
  width: number,
  products: Float64Array,
  diagonal: Float64Array,
  firstPlace: number,
  takePivot: TakePivot,
): void {
  const end = j + width;
  for (let c = j; c < end; c++) {
    const pivot = takePivot(firstPlace + c, panel[start + c * columns + c] as number);
    diagonal[firstPlace + c] = pivot;
    for (let i = c + 1; i < end; i++) {
      const place = i * columns + c;
      const w = panel[start + place] as number;
      products[place] = w;
      panel[start + place] = w / pivot;
      for (let k = c + 1; k <= i; k++) {
        const to = start + i * columns + k;
        panel[to] = (panel[to] as number) - w * (panel[start + k * columns + c] as number);
      }
    }
  }
}

/** The three columns from j on below their pivots: W into `products`, L into the panel. */
function finishThree(
  { panel, start, columns, rows }: Front,
  j: number,
  products: Float64Array,
  diagonal: Float64Array,
  firstPlace: number,
): void {
  const second = start + (j + 1) * columns + j;
  const third = second + columns;
  const l10 = panel[second] as number;
  const l20 = panel[third] as number;
  const l21 = panel[third + 1] as number;
  const d0 = diagonal[firstPlace + j] as number;
  const d1 = diagonal[firstPlace + j + 1] as number;
  const d2 = diagonal[firstPlace + j + 2] as number;
  const end = (columns + rows) * columns;
  for (let to = (j + TILE) * columns + j; to < end; to += columns) {
    const from = start + to;
    const w0 = panel[from] as number;
    const w1 = (panel[from + 1] as number) - l10 * w0;
    const w2 = (panel[from + 2] as number) - l20 * w0 - l21 * w1;
    products[to] = w0;
    products[to + 1] = w1;
    products[to + 2] = w2;
    panel[from] = w0 / d0;
    panel[from + 1] = w1 / d1;
    panel[from + 2] = w2 / d2;
  }
}

/** The same for the last columns, where fewer than three are left. */
function finishFew(
  { panel, start, columns, rows }: Front,
  j: number,
  width: number,
  products: Float64Array,
  diagonal: Float64Array,
  firstPlace: number,
): void {
  for (let i = j + width; i < columns + rows; i++) {
    const row = i * columns;
    for (let c = j; c < j + width; c++) {
      const w = panel[start + row + c] as number;
      products[row + c] = w;
      panel[start + row + c] = w / (diagonal[firstPlace + c] as number);
      for (let k = c + 1; k < j + width; k++) {
        const to = start + row + k;
        panel[to] = (panel[to] as number) - w * (panel[start + k * columns + c] as number);
      }
    }
  }
}

const FAST_MEMORY = 3072; // numbers of W worked on at a time: 24 KiB of a first-level cache of 32 KiB or more

/** block −= W·Lᵀ, lower triangle in tiles (the tiles on the diagonal whole). */
function subtractLower(front: Front, products: Float64Array, subtractTiles: SubtractTiles): void {
  const { panel, start, columns, rows, block, blockStart } = front;
  const below = columns * columns;
  const whole = rows - (rows % TILE);
  const strip = Math.max(TILE, Math.floor(FAST_MEMORY / columns / TILE) * TILE);
  for (let top = 0; top < whole; top += strip) {
    const bottom = Math.min(top + strip, whole);
    for (let j = 0; j < bottom; j += TILE) {
      const i = Math.max(top, j);
      const w = below + i * columns;
      const l = start + below + j * columns;
      const c = blockStart + i * rows + j;
      subtractTiles(products, w, columns, panel, l, columns, columns, block, c, rows, (bottom - i) / TILE);
    }
  }
  if (whole === rows) return;
  const w = below + whole * columns;
  const c = blockStart + whole * rows;
  subtractEdge(products, w, columns, rows - whole, panel, start + below, columns, rows, columns, block, c, rows);
}
