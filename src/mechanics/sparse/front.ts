import { subtractEdge, subtractTile, TILE } from "./front-kernel.ts";

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
): void {
  const all = columns + rows;
  // In here the panel is W = L·D, which the products need beside L.
  for (let j = 0; j < columns; j += TILE) {
    const width = Math.min(TILE, columns - j);
    for (let i = j; i < j + width; i++) scaleRow(panel, start, columns, i, j, scaled, diagonal, firstPlace);
    subtractProducts(panel, start, columns, j, all, scaled, j, width);
    for (let c = j; c < j + width; c++) {
      const place = start + c * columns + c;
      const pivot = takePivot(firstPlace + c, panel[place] as number);
      panel[place] = pivot;
      diagonal[firstPlace + c] = pivot;
      for (let later = c + 1; later < j + width; later++) {
        const l = (panel[start + later * columns + c] as number) / pivot;
        const column = start + later;
        for (let i = later; i < all; i++) {
          const row = i * columns;
          panel[column + row] = (panel[column + row] as number) - l * (panel[start + row + c] as number);
        }
      }
    }
  }
  for (let i = 0; i < all; i++) scaleRow(panel, start, columns, i, Math.min(i, columns), scaled, diagonal, firstPlace);
  subtractLower(panel, start + columns * columns, columns, rows, scaled, columns * columns, block, blockStart);
  panel.set(scaled.subarray(0, all * columns), start);
}

function scaleRow(
  panel: Float64Array,
  start: number,
  columns: number,
  row: number,
  depth: number,
  scaled: Float64Array,
  diagonal: Float64Array,
  firstPlace: number,
): void {
  const from = start + row * columns;
  const to = row * columns;
  for (let k = 0; k < depth; k++) scaled[to + k] = (panel[from + k] as number) / (diagonal[firstPlace + k] as number);
}

/** Brings columns j … j + width − 1 of the panel up to date with the columns before them, from row j down. */
function subtractProducts(
  panel: Float64Array,
  start: number,
  columns: number,
  j: number,
  all: number,
  scaled: Float64Array,
  depth: number,
  width: number,
): void {
  if (depth === 0) return;
  const b = j * columns;
  let i = j;
  if (width === TILE) {
    for (; i + TILE <= all; i += TILE) {
      const row = start + i * columns;
      subtractTile(panel, row, columns, scaled, b, columns, depth, panel, row + j, columns);
    }
  }
  const row = start + i * columns;
  subtractEdge(panel, row, columns, all - i, scaled, b, columns, width, depth, panel, row + j, columns);
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
): void {
  const whole = rows - (rows % TILE);
  const strip = Math.max(TILE, Math.floor(FAST_MEMORY / columns / TILE) * TILE);
  for (let top = 0; top < whole; top += strip) {
    const bottom = Math.min(top + strip, whole);
    for (let j = 0; j < bottom; j += TILE) {
      const b = scaledFrom + j * columns;
      for (let i = Math.max(top, j); i < bottom; i += TILE) {
        subtractTile(
          panel,
          from + i * columns,
          columns,
          scaled,
          b,
          columns,
          columns,
          block,
          blockStart + i * rows + j,
          rows,
        );
      }
    }
  }
  if (whole < rows) {
    const row = from + whole * columns;
    const c = blockStart + whole * rows;
    subtractEdge(panel, row, columns, rows - whole, scaled, scaledFrom, columns, rows, columns, block, c, rows);
  }
}
