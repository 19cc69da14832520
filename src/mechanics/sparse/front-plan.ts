import { at } from "./at.ts";
import { inverse } from "./elimination-tree.ts";
import type { Joints } from "./joint-graph.ts";
import type { Supernodes } from "./supernodes.ts";
import type { SymmetricMatrix } from "./symmetric-matrix.ts";

/**
 * Where everything goes in the factorisation, by supernode s. Its front has `columns` pivots and as many more rows as it
 * couples to; the pivot columns are a panel of (columns + rows) × columns, row by row, at `panelStart[s]` of the factor.
 */
export interface FrontPlan {
  readonly fronts: number;
  /** Unknowns in the order of elimination: the unknown at place k is `unknownAt[k]`. */
  readonly unknownAt: Int32Array;
  readonly placeOf: Int32Array;
  /** Front s eliminates the places `firstPlace[s] … firstPlace[s + 1] - 1`. */
  readonly firstPlace: Int32Array;
  /** The places it couples to: `row[rowStart[s]] …`, ascending. */
  readonly rowStart: Int32Array;
  readonly row: Int32Array;
  /** Beside `row`: where that row is in the front of the parent. */
  readonly inParent: Int32Array;
  readonly parent: Int32Array;
  readonly children: Int32Array;
  /** The fronts below front s in the tree are `lowest[s] … s − 1`. */
  readonly lowest: Int32Array;
  readonly panelStart: Float64Array;
  /** Entries `entry[entryStart[s]] …` of the matrix go to places `target[entryStart[s]] …` of the panels, which are of front s. */
  readonly entryStart: Int32Array;
  readonly entry: Int32Array;
  readonly target: Int32Array;
  /** 1 for fronts at odd depth in the tree. Their blocks wait on a stack of their own, from `oddStack` of the stack on. */
  readonly odd: Uint8Array;
  readonly oddStack: number;
  readonly stackSize: number;
  readonly largestPanel: number;
}

/** Plans the fronts for supernodes of joints listed in `order`. Throws a RangeError where the factor exceeds one typed array. */
export function planFronts(matrix: SymmetricMatrix, joints: Joints, order: Int32Array, blocks: Supernodes): FrontPlan {
  const { count: fronts, parent } = blocks;
  const placeOfJoint = new Int32Array(order.length + 1);
  const unknownAt = new Int32Array(matrix.n);
  for (let k = 0, place = 0; k < order.length; k++) {
    const v = at(order, k);
    for (let e = at(joints.first, v); e < at(joints.first, v + 1); e++) unknownAt[place++] = at(joints.unknown, e);
    placeOfJoint[k + 1] = place;
  }
  const firstPlace = blocks.first.map((k) => at(placeOfJoint, k));
  const { rowStart, row } = expandRows(blocks, placeOfJoint);
  const sizes = measure(fronts, firstPlace, rowStart, parent);
  const placeOf = inverse(unknownAt);
  return {
    fronts,
    unknownAt,
    placeOf,
    firstPlace,
    rowStart,
    row,
    parent,
    inParent: locate(fronts, firstPlace, rowStart, row, parent),
    ...scatter(matrix, placeOf, firstPlace, rowStart, row, sizes.panelStart),
    ...sizes,
  };
}

function expandRows(blocks: Supernodes, placeOfJoint: Int32Array): { rowStart: Int32Array; row: Int32Array } {
  const rowStart = new Int32Array(blocks.count + 1);
  let total = 0;
  for (const k of blocks.row) total += at(placeOfJoint, k + 1) - at(placeOfJoint, k);
  const row = new Int32Array(total);
  let filled = 0;
  for (let s = 0; s < blocks.count; s++) {
    for (let e = at(blocks.rowStart, s); e < at(blocks.rowStart, s + 1); e++) {
      const k = at(blocks.row, e);
      for (let place = at(placeOfJoint, k); place < at(placeOfJoint, k + 1); place++) row[filled++] = place;
    }
    rowStart[s + 1] = filled;
  }
  return { rowStart, row };
}

function measure(fronts: number, firstPlace: Int32Array, rowStart: Int32Array, parent: Int32Array) {
  const panelStart = new Float64Array(fronts + 1);
  const children = new Int32Array(fronts);
  const lowest = Int32Array.from({ length: fronts }, (_, s) => s);
  const childSize = new Float64Array(fronts);
  const odd = new Uint8Array(fronts);
  for (let s = fronts - 1; s >= 0; s--) odd[s] = at(parent, s) === -1 ? 0 : 1 - (odd[at(parent, s)] as number);
  let largestPanel = 0;
  const onStack = [0, 0];
  const stacks = [0, 0];
  for (let s = 0; s < fronts; s++) {
    const columns = at(firstPlace, s + 1) - at(firstPlace, s);
    const rows = at(rowStart, s + 1) - at(rowStart, s);
    const panel = (columns + rows) * columns;
    panelStart[s + 1] = (panelStart[s] as number) + panel;
    largestPanel = Math.max(largestPanel, panel);
    const own = odd[s] as number;
    onStack[own] = (onStack[own] as number) + rows * rows;
    onStack[1 - own] = (onStack[1 - own] as number) - (childSize[s] as number);
    stacks[own] = Math.max(stacks[own] as number, onStack[own] as number);
    const up = at(parent, s);
    if (up === -1) continue;
    lowest[up] = Math.min(at(lowest, up), at(lowest, s));
    children[up] = at(children, up) + 1;
    childSize[up] = (childSize[up] as number) + rows * rows;
  }
  const oddStack = stacks[0] as number;
  const stackSize = oddStack + (stacks[1] as number);
  const most = 2 ** 31 - 1; // places are kept as 32-bit integers
  const total = panelStart[fronts] as number;
  if (total > most || stackSize > most) {
    throw new RangeError(`the factor needs ${total} numbers and ${stackSize} in between; at most ${most} fit`);
  }
  return { panelStart, children, lowest, odd, largestPanel, oddStack, stackSize };
}

/** Rows of each front by their number in the parent's front; both lists ascend, so one walk finds all. */
function locate(
  fronts: number,
  firstPlace: Int32Array,
  rowStart: Int32Array,
  row: Int32Array,
  parent: Int32Array,
): Int32Array {
  const inParent = new Int32Array(row.length);
  for (let s = 0; s < fronts; s++) {
    const up = at(parent, s);
    if (up === -1) continue;
    const from = at(firstPlace, up);
    const end = at(firstPlace, up + 1);
    let next = at(rowStart, up);
    for (let e = at(rowStart, s); e < at(rowStart, s + 1); e++) {
      const place = at(row, e);
      if (place < end) {
        inParent[e] = place - from;
        continue;
      }
      while (at(row, next) !== place) next++;
      inParent[e] = end - from + next - at(rowStart, up);
    }
  }
  return inParent;
}

function scatter(
  matrix: SymmetricMatrix,
  placeOf: Int32Array,
  firstPlace: Int32Array,
  rowStart: Int32Array,
  row: Int32Array,
  panelStart: Float64Array,
): Pick<FrontPlan, "entryStart" | "entry" | "target"> {
  const { n, colStart, rowIndex } = matrix;
  // Entries by the column they fall in, so that the rows of a front are numbered once.
  const count = new Int32Array(n + 1);
  const columnOf = new Int32Array(rowIndex.length);
  const rowOf = new Int32Array(rowIndex.length);
  for (let j = 0; j < n; j++) {
    const pj = at(placeOf, j);
    for (let e = at(colStart, j); e < at(colStart, j + 1); e++) {
      const pi = at(placeOf, at(rowIndex, e));
      columnOf[e] = Math.min(pi, pj);
      rowOf[e] = Math.max(pi, pj);
      count[at(columnOf, e) + 1] = at(count, at(columnOf, e) + 1) + 1;
    }
  }
  for (let k = 0; k < n; k++) count[k + 1] = at(count, k + 1) + at(count, k);
  const entry = new Int32Array(rowIndex.length);
  for (let e = 0; e < entry.length; e++) {
    const slot = at(count, at(columnOf, e));
    entry[slot] = e;
    count[at(columnOf, e)] = slot + 1;
  }
  const target = new Int32Array(rowIndex.length);
  const entryStart = new Int32Array(firstPlace.length);
  const local = new Int32Array(n);
  let next = 0;
  for (let s = 0; s + 1 < firstPlace.length; s++) {
    const from = at(firstPlace, s);
    const end = at(firstPlace, s + 1);
    const start = panelStart[s] as number;
    for (let k = from; k < end; k++) local[k] = k - from;
    for (let e = at(rowStart, s); e < at(rowStart, s + 1); e++) local[at(row, e)] = end - from + e - at(rowStart, s);
    for (; next < entry.length && at(columnOf, at(entry, next)) < end; next++) {
      const e = at(entry, next);
      target[next] = start + at(local, at(rowOf, e)) * (end - from) + at(columnOf, e) - from;
    }
    entryStart[s + 1] = next;
  }
  return { entryStart, entry, target };
}
