import type { SymmetricMatrix } from "./symmetric-matrix.ts";

/** The share of one element: an m × m symmetric block on m unknowns. */
export interface ElementBlock {
  /** The m unknowns the block acts on; a negative one is held and its row and column are left out. */
  readonly unknowns: ArrayLike<number>;
  /** m × m, row by row; only the lower triangle is read. */
  readonly values: ArrayLike<number>;
}

interface Triplets {
  readonly row: Int32Array;
  readonly column: Int32Array;
  readonly value: Float64Array;
  readonly count: number;
}

/** How many entries of the lower triangle blocks have. */
function entriesOf(blocks: Iterable<ElementBlock>): number {
  let count = 0;
  for (const { unknowns } of blocks) {
    let free = 0;
    for (let a = 0; a < unknowns.length; a++) if ((unknowns[a] as number) >= 0) free++;
    count += (free * (free + 1)) / 2;
  }
  return count;
}

/**
 * Sums element blocks, gone through twice, into one matrix of n unknowns. Every unknown gets a diagonal entry, also one that no block touches.
 * The pattern hangs on the unknowns alone, and sums are formed in the order of the blocks, so a result repeats exactly.
 * Throws a RangeError for an unknown ≥ n, a block that is not m × m, or a value that is not finite.
 */
export function assembleSymmetric(n: number, blocks: Iterable<ElementBlock>): SymmetricMatrix {
  const triplets = collect(n, blocks);
  const byRow = stableOrder(triplets.row, triplets.count, n, undefined);
  const byColumn = stableOrder(triplets.column, triplets.count, n, byRow);
  return sumRuns(n, triplets, byColumn);
}

/**
 * The same sum stored with the pattern of another matrix of n unknowns, entries that no block touches as zeros; undefined
 * where the pattern has no place for an entry. Throws as `assembleSymmetric` does.
 */
export function assembleOnPattern(
  { n, colStart, rowIndex }: SymmetricMatrix,
  blocks: Iterable<ElementBlock>,
): SymmetricMatrix | undefined {
  const value = new Float64Array(rowIndex.length);
  let place = 0;
  for (const { unknowns, values } of blocks) {
    const m = checkedSize(n, unknowns, values);
    for (let b = 0; b < m; b++) {
      const j = unknowns[b] as number;
      if (j < 0) continue;
      for (let a = b; a < m; a++) {
        const i = unknowns[a] as number;
        if (i < 0) continue;
        const entry = values[a * m + b] as number;
        if (!Number.isFinite(entry)) throw notFinite(i, j);
        const [row, column] = i < j ? [j, i] : [i, j];
        // Rows of one joint mostly follow each other.
        place += 1;
        const fits = place < (colStart[column + 1] as number) && place >= (colStart[column] as number);
        if (!fits || rowIndex[place] !== row)
          place = placeOf(rowIndex, row, colStart[column] as number, colStart[column + 1] as number);
        if (place < 0) return undefined;
        value[place] = (value[place] as number) + (i === j && a !== b ? 2 * entry : entry);
      }
    }
  }
  return { n, colStart, rowIndex, value };
}

/** Place of a row among ascending ones from `low` up to `high`; −1 where it is not. */
function placeOf(rowIndex: Int32Array, row: number, low: number, high: number): number {
  let [from, to] = [low, high - 1];
  while (from < to) {
    const middle = (from + to) >>> 1;
    if ((rowIndex[middle] as number) < row) from = middle + 1;
    else to = middle;
  }
  return rowIndex[from] === row ? from : -1;
}

function notFinite(i: number, j: number): RangeError {
  return new RangeError(`the entry of unknowns ${i} and ${j} is not a finite number`);
}

/** Number of unknowns of a block. */
function checkedSize(n: number, unknowns: ArrayLike<number>, values: ArrayLike<number>): number {
  const m = unknowns.length;
  if (values.length !== m * m)
    throw new RangeError(`a block on ${m} unknowns needs ${m * m} values, not ${values.length}`);
  for (let a = 0; a < m; a++)
    if ((unknowns[a] as number) >= n) throw new RangeError(`unknown ${unknowns[a]} does not exist: there are ${n}`);
  return m;
}

function collect(n: number, blocks: Iterable<ElementBlock>): Triplets {
  const most = n + entriesOf(blocks);
  const row = new Int32Array(most);
  const column = new Int32Array(most);
  const value = new Float64Array(most);
  let count = 0;
  const push = (i: number, j: number, a: number): void => {
    if (!Number.isFinite(a)) throw notFinite(i, j);
    row[count] = Math.max(i, j);
    column[count] = Math.min(i, j);
    value[count++] = a;
  };
  for (let j = 0; j < n; j++) push(j, j, 0);
  for (const { unknowns, values } of blocks) {
    const m = checkedSize(n, unknowns, values);
    for (let a = 0; a < m; a++) {
      const i = unknowns[a] as number;
      if (i < 0) continue;
      for (let b = 0; b <= a; b++) {
        const j = unknowns[b] as number;
        if (j < 0) continue;
        const entry = values[a * m + b] as number;
        // Two places of one block on the same unknown: both triangles fall on its diagonal.
        push(i, j, i === j && a !== b ? 2 * entry : entry);
      }
    }
  }
  return { row, column, value, count };
}

/** Counting sort: the places 0 … count − 1 (or those of `previous`, kept in order among equals) by ascending key. */
function stableOrder(key: Int32Array, count: number, keys: number, previous: Int32Array | undefined): Int32Array {
  const next = new Int32Array(keys + 1);
  for (let e = 0; e < count; e++) {
    const slot = (key[e] as number) + 1;
    next[slot] = (next[slot] as number) + 1;
  }
  for (let k = 0; k < keys; k++) next[k + 1] = (next[k + 1] as number) + (next[k] as number);
  const order = new Int32Array(count);
  for (let place = 0; place < count; place++) {
    const e = previous === undefined ? place : (previous[place] as number);
    const k = key[e] as number;
    const slot = next[k] as number;
    order[slot] = e;
    next[k] = slot + 1;
  }
  return order;
}

/** How many places the ordered entries take. */
function runsOf({ row, column }: Triplets, order: Int32Array): number {
  let [runs, before] = [0, -1];
  for (const e of order) {
    if (before < 0 || row[e] !== row[before] || column[e] !== column[before]) runs++;
    before = e;
  }
  return runs;
}

function sumRuns(n: number, triplets: Triplets, order: Int32Array): SymmetricMatrix {
  const colStart = new Int32Array(n + 1);
  const runs = runsOf(triplets, order);
  const rowIndex = new Int32Array(runs);
  const value = new Float64Array(runs);
  let filled = 0;
  let currentRow = -1;
  let currentColumn = -1;
  for (const e of order) {
    const i = triplets.row[e] as number;
    const j = triplets.column[e] as number;
    if (i === currentRow && j === currentColumn) {
      value[filled - 1] = (value[filled - 1] as number) + (triplets.value[e] as number);
      continue;
    }
    currentRow = i;
    currentColumn = j;
    rowIndex[filled] = i;
    value[filled++] = triplets.value[e] as number;
    colStart[j + 1] = filled;
  }
  return { n, colStart, rowIndex, value };
}
