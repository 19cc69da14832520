import type { Front } from "./front.ts";

/** The block a front hands on: size × size numbers from `from` on, row by row, of which the lower triangle counts. */
export interface HandedOn {
  readonly numbers: Float64Array;
  readonly from: number;
  readonly size: number;
  /** Row r is row `inParent[places + r]` of the parent's front. */
  readonly inParent: Int32Array;
  readonly places: number;
}

/**
 * Adds a block to the front of the parent: to its panel where a column is eliminated there, else to the block it hands on in
 * turn. `blank` says that nothing has been put in the parent's block yet, not even zeros.
 */
export function handOn(child: HandedOn, parent: Front, blank: boolean): void {
  const eliminated = addToPanel(child, parent);
  const { inParent, places, size, numbers } = child;
  const { columns, rows, block, blockStart } = parent;
  const kept = size - eliminated;
  if (blank && kept === rows) {
    // All rows of the parent come from this child, so they are the same rows.
    for (let r = 0; r < rows; r++) {
      const source = child.from + (eliminated + r) * size + eliminated;
      block.copyWithin(blockStart + r * rows, source, source + r + 1);
    }
    return;
  }
  if (blank) clear(parent);
  for (let r = eliminated; r < size; r++) {
    const source = child.from + r * size;
    const row = blockStart + ((inParent[places + r] as number) - columns) * rows - columns;
    for (let c = eliminated; c <= r; c++) {
      const to = row + (inParent[places + c] as number);
      block[to] = (block[to] as number) + (numbers[source + c] as number);
    }
  }
}

/** Zeros in the lower triangle of the block that a front hands on. */
export function clear({ block, blockStart, rows }: Front): void {
  for (let r = 0; r < rows; r++) {
    const from = blockStart + r * rows;
    // The kernel writes whole tiles on the diagonal, whose upper corners nobody reads.
    block.fill(0, from, from + r + 1);
  }
}

/** Gives how many of the child's columns the parent eliminates. */
function addToPanel({ numbers, from, size, inParent, places }: HandedOn, { panel, start, columns }: Front): number {
  let eliminated = 0;
  while (eliminated < size && (inParent[places + eliminated] as number) < columns) eliminated++;
  for (let r = 0; r < size; r++) {
    const source = from + r * size;
    const row = start + (inParent[places + r] as number) * columns;
    const width = Math.min(eliminated, r + 1);
    for (let c = 0; c < width; c++) {
      const to = row + (inParent[places + c] as number);
      panel[to] = (panel[to] as number) + (numbers[source + c] as number);
    }
  }
  return eliminated;
}
