import { at } from "./at.ts";
import { type EliminationTree, inverse } from "./elimination-tree.ts";
import type { JointGraph } from "./joint-graph.ts";

/** Runs of joints whose columns share one list of rows and are eliminated together as a dense block. */
export interface Supernodes {
  readonly count: number;
  /** Supernode s holds the places `first[s] … first[s + 1] - 1` of the order. */
  readonly first: Int32Array;
  /** The places below it that it couples to: `row[rowStart[s]] … row[rowStart[s + 1] - 1]`, ascending. */
  readonly rowStart: Int32Array;
  readonly row: Int32Array;
  /** The supernode its rows are handed to, or −1. */
  readonly parent: Int32Array;
}

/** Joining a supernode to the next one is worth it up to this share of stored zeros, by columns of the result (measured). */
const ALLOWED_ZEROS: readonly { readonly columns: number; readonly share: number }[] = [
  { columns: 12, share: 0.15 },
  { columns: 48, share: 0.1 },
  { columns: Number.POSITIVE_INFINITY, share: 0.03 },
];

/** Wider blocks are cut into chains, so that what is worked on at a time stays in the fast memory of the processor. */
const MOST_COLUMNS = 192;

/**
 * Fundamental supernodes, joined where that costs few zeros: Ashcraft, Grimes 1989, "The influence of relaxed supernode
 * partitions on the multifrontal method". The order of the tree has to be a postorder.
 */
export function supernodes(graph: JointGraph, tree: EliminationTree): Supernodes {
  const first = cutWide(graph, tree, partition(graph, tree));
  return { count: first.length - 1, first, ...rows(graph, tree, first) };
}

interface Block {
  first: number;
  columns: number;
  height: number;
  zeros: number;
}

function partition(graph: JointGraph, tree: EliminationTree): Block[] {
  const blocks: Block[] = [];
  const weightAt = (k: number): number => at(graph.weight, at(tree.order, k));
  for (let k = 0; k < tree.order.length; k++) {
    let block: Block = { first: k, columns: weightAt(k), height: at(tree.height, k), zeros: 0 };
    for (let last = blocks.at(-1); last !== undefined; last = blocks.at(-1)) {
      // Only the block just before can be joined without renumbering, and only if it hands its rows to this one.
      const up = at(tree.parent, block.first - 1);
      if (up === -1 || up > k) break;
      const joined = join(last, block);
      if (joined === undefined) break;
      blocks.pop();
      block = joined;
    }
    blocks.push(block);
  }
  return blocks;
}

function join(lower: Block, upper: Block): Block | undefined {
  const height = lower.columns + upper.height;
  const added = lower.columns * (height - lower.height);
  const zeros = lower.zeros + upper.zeros + added;
  const columns = lower.columns + upper.columns;
  const joined = { first: lower.first, columns, height, zeros };
  if (added === 0) return joined;
  const stored = columns * height - (columns * (columns - 1)) / 2;
  const rule = ALLOWED_ZEROS.find((step) => columns <= step.columns);
  return rule !== undefined && zeros <= rule.share * stored ? joined : undefined;
}

function cutWide(graph: JointGraph, tree: EliminationTree, blocks: readonly Block[]): Int32Array {
  const first: number[] = [];
  for (let b = 0; b < blocks.length; b++) {
    const { first: from, columns } = blocks[b] as Block;
    const until = blocks[b + 1]?.first ?? tree.order.length;
    const most = columns / Math.ceil(columns / MOST_COLUMNS);
    let width = 0;
    first.push(from);
    for (let k = from; k < until; k++) {
      const weight = at(graph.weight, at(tree.order, k));
      if (width > 0 && width + weight > most + weight / 2) {
        first.push(k);
        width = 0;
      }
      width += weight;
    }
  }
  first.push(tree.order.length);
  return Int32Array.from(first);
}

function rows(graph: JointGraph, tree: EliminationTree, first: Int32Array): Omit<Supernodes, "count" | "first"> {
  const count = first.length - 1;
  const place = inverse(tree.order);
  const owner = new Int32Array(tree.order.length);
  for (let s = 0; s < count; s++) owner.fill(s, at(first, s), at(first, s + 1));
  const parent = new Int32Array(count).fill(-1);
  const firstChild = new Int32Array(count).fill(-1);
  const nextSibling = new Int32Array(count).fill(-1);
  const seenBy = new Int32Array(tree.order.length).fill(-1);
  const rowStart = new Int32Array(count + 1);
  let row = new Int32Array(4 * tree.order.length + 16);
  let filled = 0;
  const meet = (s: number, r: number): void => {
    if (r < at(first, s + 1) || at(seenBy, r) === s) return;
    seenBy[r] = s;
    if (filled === row.length) {
      const larger = new Int32Array(2 * filled);
      larger.set(row);
      row = larger;
    }
    row[filled++] = r;
  };
  for (let s = 0; s < count; s++) {
    for (let k = at(first, s); k < at(first, s + 1); k++) {
      const v = at(tree.order, k);
      for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) meet(s, at(place, at(graph.neighbour, e)));
    }
    for (let child = at(firstChild, s); child !== -1; child = at(nextSibling, child)) {
      for (let e = at(rowStart, child); e < at(rowStart, child + 1); e++) meet(s, at(row, e));
    }
    rowStart[s + 1] = filled;
    if (filled === at(rowStart, s)) continue;
    row.subarray(at(rowStart, s), filled).sort();
    const up = at(owner, at(row, at(rowStart, s)));
    parent[s] = up;
    nextSibling[s] = at(firstChild, up);
    firstChild[up] = s;
  }
  return { rowStart, row: row.slice(0, filled), parent };
}
