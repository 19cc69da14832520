/** A piece to be sawn from stock lengths. */
export interface Piece {
  readonly id: string;
  /** m */
  readonly length: number;
}

/** One stock bar and the pieces sawn from it, in order. */
export interface StockBar {
  readonly pieces: readonly Piece[];
  /** What is left after the last cut, m. */
  readonly rest: number;
}

export interface Nesting {
  readonly bars: readonly StockBar[];
  /** Pieces longer than a stock bar. */
  readonly tooLong: readonly Piece[];
  /** No plan can do with fewer stock bars than this. */
  readonly atLeast: number;
}

/** Lengths that differ by less are one length on the saw, m. */
const SAW = 1e-6;

/** The fewest bars that could do: by length all told, and by pieces so long that no two share a bar. */
function lowerBound(pieces: readonly Piece[], stock: number, kerf: number): number {
  let sum = 0;
  let halves = 0;
  for (const { length } of pieces) {
    sum += length + kerf;
    if (2 * length + kerf > stock + SAW) halves += 1;
  }
  return Math.max(halves, Math.ceil((sum - SAW) / (stock + kerf)));
}

/**
 * Lays pieces [m] out on stock bars [m], longest first into the fullest bar that still has room for it (best-fit
 * decreasing). Never worse than 11/9 of the least possible number of bars and two thirds of a bar (G. Dósa, "The tight
 * bound of first fit decreasing", 2007; it holds for best fit too); `atLeast` says how far this plan can be from the best.
 */
export function nest(pieces: readonly Piece[], stock: number, kerf: number): Nesting {
  const tooLong = pieces.filter((piece) => piece.length > stock + SAW);
  const fitting = pieces.filter((piece) => piece.length <= stock + SAW);
  const sorted = [...fitting].sort((a, b) => b.length - a.length || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const open: { pieces: Piece[]; rest: number }[] = [];
  for (const piece of sorted) {
    let best: { pieces: Piece[]; rest: number } | undefined;
    for (const bar of open) if (bar.rest >= piece.length - SAW && (!best || bar.rest < best.rest - SAW)) best = bar;
    if (!best) {
      best = { pieces: [], rest: stock };
      open.push(best);
    }
    best.pieces.push(piece);
    // The saw takes its kerf unless the piece ends at the end of the bar.
    best.rest = Math.max(0, best.rest - piece.length - kerf);
  }
  return { bars: open, tooLong, atLeast: lowerBound(fitting, stock, kerf) };
}
