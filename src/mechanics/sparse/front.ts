import { type SubtractTiles, subtractEdge, TILE } from "./front-kernel.ts";

/** Decides about the pivot of a column: gives the value to divide by. */
export type TakePivot = (column: number, pivot: number) => number;

/**
 * Eliminates the pivot columns of a front. `panel` holds (columns + rows) × columns numbers from `start` on, row by row; it
 * comes in as the assembled front and goes out as L (unit diagonal not stored, what lies right of it meaningless).
 * `diagonal[firstPlace + k]` receives pivot k. `scaled` is room for a second panel. `block` holds what is handed on:
 * rows × rows numbers from `blockStart` on, row by row, lower triangle; the eliminated part is subtracted from it.
 */
export function eliminate(
  panel: Float64Array,
  start: number,
  columns: number,
  rows: number,
  scaled: Float64Array,
  diagonal: Float64Array,
  firstPlace: number,
  takePivot: TakePivot,
  block: Float64Array,
  blockStart: number,
  subtractTiles: SubtractTiles,
): void {
  const all = columns + rows;
  // In here the panel is W = L·D, which the products need beside L, and `scaled` is L as far as it is known.
  for (let j = 0; j < columns; j += TILE) {
    const width = Math.min(TILE, columns - j);
    subtractProducts(panel, start, columns, j, all, scaled, width, subtractTiles);
    for (let c = j; c < j + width; c++) {
      const place = start + c * columns + c;
      const pivot = takePivot(firstPlace + c, panel[place] as number);
      panel[place] = pivot;
      diagonal[firstPlace + c] = pivot;
      for (let later = c + 1; later < j + width; later++) {
        const l = (panel[start + later * columns + c] as number) / pivot;
        for (let i = later; i < j + width; i++) {
          const row = start + i * columns;
          panel[row + later] = (panel[row + later] as number) - l * (panel[row + c] as number);
        }
      }
    }
    if (width === TILE) finishThree(panel, start, columns, j, all, scaled);
    else finishColumns(panel, start, columns, j, width, all, scaled);
  }
  const below = columns * columns;
  subtractLower(panel, start + below, columns, rows, scaled, below, block, blockStart, subtractTiles);
  panel.set(scaled.subarray(0, all * columns), start);
}

/** Columns j … j + width − 1 below and in their pivot block, which is eliminated: W in the panel, L in `scaled`. */
function finishColumns(
  panel: Float64Array,
  start: number,
  columns: number,
  j: number,
  width: number,
  all: number,
  scaled: Float64Array,
): void {
  for (let i = j; i < all; i++) {
    const row = i * columns;
    for (let c = j; c < Math.min(i, j + width); c++) {
      const pivot = panel[start + c * columns + c] as number;
      const w = panel[start + row + c] as number;
      scaled[row + c] = w / pivot;
      if (i < j + width) continue;
      for (let later = c + 1; later < j + width; later++) {
        const l = (panel[start + later * columns + c] as number) / pivot;
        panel[start + row + later] = (panel[start + row + later] as number) - l * w;
      }
    }
  }
}

/** The same for three columns, in one pass. */
function finishThree(
  panel: Float64Array,
  start: number,
  columns: number,
  j: number,
  all: number,
  scaled: Float64Array,
): void {
  finishColumns(panel, start, columns, j, TILE, j + TILE, scaled);
  const second = (j + 1) * columns + j;
  const third = second + columns;
  const d0 = panel[start + second - columns] as number;
  const d1 = panel[start + second + 1] as number;
  const d2 = panel[start + third + 2] as number;
  const l10 = scaled[second] as number;
  const l20 = scaled[third] as number;
  const l21 = scaled[third + 1] as number;
  for (let i = j + TILE; i < all; i++) {
    const to = i * columns + j;
    const at = start + to;
    const w0 = panel[at] as number;
    const w1 = (panel[at + 1] as number) - l10 * w0;
    const w2 = (panel[at + 2] as number) - l20 * w0 - l21 * w1;
    panel[at + 1] = w1;
    panel[at + 2] = w2;
    scaled[to] = w0 / d0;
    scaled[to + 1] = w1 / d1;
    scaled[to + 2] = w2 / d2;
  }
}

/** Brings columns j … j + width − 1 of the panel up to date with the columns before them, from row j down. */
function subtractProducts(
  panel: Float64Array,
  start: number,
  columns: number,
  j: number,
  all: number,
  scaled: Float64Array,
  width: number,
  subtractTiles: SubtractTiles,
): void {
  if (j === 0) return;
  const b = j * columns;
  const tiles = width === TILE ? Math.floor((all - j) / TILE) : 0;
  const row = start + j * columns;
  subtractTiles(panel, row, columns, scaled, b, columns, j, panel, row + j, columns, tiles);
  const left = all - j - tiles * TILE;
  const edge = row + tiles * TILE * columns;
  subtractEdge(panel, edge, columns, left, scaled, b, columns, width, j, panel, edge + j, columns);
}

const FAST_MEMORY = 3072; // numbers of W worked on at a time: 24 KiB of a first-level cache of 32 KiB or more

/** block −= W·Lᵀ, lower triangle in tiles (the tiles on the diagonal whole). */
function subtractLower(
  panel: Float64Array,
  from: number,
  columns: number,
  rows: number,
  scaled: Float64Array,
  scaledFrom: number,
  block: Float64Array,
  blockStart: number,
  subtractTiles: SubtractTiles,
): void {
  const whole = rows - (rows % TILE);
  const strip = Math.max(TILE, Math.floor(FAST_MEMORY / columns / TILE) * TILE);
  for (let top = 0; top < whole; top += strip) {
    const bottom = Math.min(top + strip, whole);
    for (let j = 0; j < bottom; j += TILE) {
      const b = scaledFrom + j * columns;
      const i = Math.max(top, j);
      const a = from + i * columns;
      const c = blockStart + i * rows + j;
      subtractTiles(panel, a, columns, scaled, b, columns, columns, block, c, rows, (bottom - i) / TILE);
    }
  }
  if (whole < rows) {
    const row = from + whole * columns;
    const c = blockStart + whole * rows;
    subtractEdge(panel, row, columns, rows - whole, scaled, scaledFrom, columns, rows, columns, block, c, rows);
  }
}
