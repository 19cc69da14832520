import type { SymmetricMatrix } from "./symmetric-matrix.ts";

/** The share of one element: an m × m symmetric block on m unknowns. */
export interface ElementBlock {
  /** The m unknowns the block acts on; a negative one is held and its row and column are left out. */
  readonly unknowns: ArrayLike<number>;
  /** m × m, row by row; only the lower triangle is read. */
  readonly values: ArrayLike<number>;
}

/**
 * Sums element blocks, gone through twice, into one matrix of n unknowns. Every unknown gets a diagonal entry, also one that no block touches.
 * The pattern hangs on the unknowns alone, and sums are formed in the order of the blocks, so a result repeats exactly.
 * Throws a RangeError for an unknown ≥ n, a block that is not m × m, or a value that is not finite.
 */
export function assembleSymmetric(n: number, blocks: Iterable<ElementBlock>): SymmetricMatrix {
  const columns = roomFor(n, blocks);
  for (const { unknowns, values } of blocks) {
    const m = checkedSize(n, unknowns, values);
    for (let a = 0; a < m; a++) {
      const i = unknowns[a] as number;
      if (i < 0) continue;
      for (let b = 0; b <= a; b++) {
        const j = unknowns[b] as number;
        if (j < 0) continue;
        const entry = values[a * m + b] as number;
        if (!Number.isFinite(entry)) throw notFinite(i, j);
        // Two places of one block on the same unknown: both triangles fall on its diagonal.
        put(columns, Math.max(i, j), Math.min(i, j), i === j && a !== b ? 2 * entry : entry);
      }
    }
  }
  return inOrder(n, columns);
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

/** Entries of each column as they come: those of column j from start[j] on, used[j] of them. */
interface Columns {
  readonly start: Int32Array;
  readonly used: Int32Array;
  readonly row: Int32Array;
  readonly value: Float64Array;
}

/** Room for all entries, each column begun with its diagonal. */
function roomFor(n: number, blocks: Iterable<ElementBlock>): Columns {
  const start = new Int32Array(n + 1).fill(1, 1);
  for (const { unknowns } of blocks) {
    for (let a = 0; a < unknowns.length; a++) {
      const i = unknowns[a] as number;
      if (i < 0) continue;
      for (let b = 0; b <= a; b++) {
        const j = unknowns[b] as number;
        if (j < 0) continue;
        const after = Math.min(i, j) + 1;
        start[after] = (start[after] as number) + 1;
      }
    }
  }
  for (let j = 0; j < n; j++) start[j + 1] = (start[j + 1] as number) + (start[j] as number);
  const row = new Int32Array(start[n] as number);
  for (let j = 0; j < n; j++) row[start[j] as number] = j;
  return { start, used: new Int32Array(n).fill(1), row, value: new Float64Array(row.length) };
}

/** Columns of more entries than this are not searched for a row: what comes then is added up at the end. */
const SEARCHED = 64;

/** Adds an entry to its column. */
function put({ start, used, row, value }: Columns, i: number, j: number, entry: number): void {
  const [from, count] = [start[j] as number, used[j] as number];
  if (count <= SEARCHED) {
    for (let e = from; e < from + count; e++) {
      if (row[e] !== i) continue;
      value[e] = (value[e] as number) + entry;
      return;
    }
  }
  row[from + count] = i;
  value[from + count] = entry;
  used[j] = count + 1;
}

/** Orders a short stretch by row, in place; those alike stay as they come. */
function sortShort(row: Int32Array, value: Float64Array, from: number, to: number): void {
  for (let e = from + 1; e < to; e++) {
    const [own, entry] = [row[e] as number, value[e] as number];
    let place = e;
    for (; place > from && (row[place - 1] as number) > own; place--) {
      row[place] = row[place - 1] as number;
      value[place] = value[place - 1] as number;
    }
    row[place] = own;
    value[place] = entry;
  }
}

/** The same of any stretch. */
function sortLong(row: Int32Array, value: Float64Array, from: number, to: number): void {
  const order = Array.from({ length: to - from }, (_, e) => from + e);
  order.sort((a, b) => (row[a] as number) - (row[b] as number) || a - b);
  const [rows, values] = [order.map((e) => row[e] as number), order.map((e) => value[e] as number)];
  row.set(rows, from);
  value.set(values, from);
}

/** Rows ascending in each column, those alike added up in the order in which they came. */
function inOrder(n: number, { start, used, row, value }: Columns): SymmetricMatrix {
  const colStart = new Int32Array(n + 1);
  let filled = 0;
  for (let j = 0; j < n; j++) {
    const [from, to] = [start[j] as number, (start[j] as number) + (used[j] as number)];
    if (to - from <= SEARCHED) sortShort(row, value, from, to);
    else sortLong(row, value, from, to);
    const first = filled;
    for (let e = from; e < to; e++) {
      if (filled > first && row[filled - 1] === row[e]) {
        value[filled - 1] = (value[filled - 1] as number) + (value[e] as number);
        continue;
      }
      row[filled] = row[e] as number;
      value[filled++] = value[e] as number;
    }
    colStart[j + 1] = filled;
  }
  return { n, colStart, rowIndex: row.slice(0, filled), value: value.slice(0, filled) };
}
