/**
 * Adds the block a front hands on (size × size, row by row, lower triangle, from `from` of the stack) to the front of its
 * parent: to the parent's panel where a column is eliminated there, else to the block the parent hands on in turn.
 * `inParent[places + r]` is the number of row r in the parent's front.
 */
export function handOn(
  inParent: Int32Array,
  places: number,
  size: number,
  stack: Float64Array,
  from: number,
  panels: Float64Array,
  panelStart: number,
  columns: number,
  blockStart: number,
  rows: number,
): void {
  let eliminated = 0;
  while (eliminated < size && (inParent[places + eliminated] as number) < columns) eliminated++;
  let source = from | 0;
  for (let r = 0; r < size; r++) {
    const row = inParent[places + r] as number;
    const inPanel = Math.min(eliminated, r + 1);
    const panelRow = (panelStart + row * columns) | 0;
    for (let c = 0; c < inPanel; c++) {
      const to = panelRow + (inParent[places + c] as number);
      panels[to] = (panels[to] as number) + (stack[source + c] as number);
    }
    if (r >= eliminated) {
      const blockRow = (blockStart + (row - columns) * rows - columns) | 0;
      for (let c = eliminated; c <= r; c++) {
        const to = blockRow + (inParent[places + c] as number);
        stack[to] = (stack[to] as number) + (stack[source + c] as number);
      }
    }
    source = (source + size) | 0;
  }
}
