import { at } from "./at.ts";
import type { JointGraph } from "./joint-graph.ts";

/** What eliminating the joints in an order brings about; all lists are by place in that order. */
export interface EliminationTree {
  readonly order: Int32Array;
  /** Place of the first joint that eliminating this one couples to, or −1 for a root. */
  readonly parent: Int32Array;
  /** Unknowns in the column of this joint when it is eliminated: its own and those it couples to. */
  readonly height: Int32Array;
}

/** Tree and column heights of eliminating `order[0]`, `order[1]` …, without forming the factor. */
export function eliminationTree(graph: JointGraph, order: Int32Array): EliminationTree {
  const place = inverse(order);
  const parent = parents(graph, order, place);
  return { order, parent, height: heights(graph, order, place, parent) };
}

/** The inverse of a permutation. */
export function inverse(order: Int32Array): Int32Array {
  const place = new Int32Array(order.length);
  for (let k = 0; k < order.length; k++) place[at(order, k)] = k;
  return place;
}

/** Liu 1986, "A compact row storage scheme for Cholesky factors using elimination trees": climb with path compression. */
function parents(graph: JointGraph, order: Int32Array, place: Int32Array): Int32Array {
  const parent = new Int32Array(order.length).fill(-1);
  const ancestor = new Int32Array(order.length).fill(-1);
  for (let k = 0; k < order.length; k++) {
    const v = at(order, k);
    for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) {
      let i = at(place, at(graph.neighbour, e));
      while (i !== -1 && i < k) {
        const above = at(ancestor, i);
        ancestor[i] = k;
        if (above === -1) parent[i] = k;
        i = above;
      }
    }
  }
  return parent;
}

/** Places such that each subtree is contiguous and ends with its root; children in ascending `rank`, then place. */
export function postorder(parent: Int32Array, rank: Int32Array): Int32Array {
  const n = parent.length;
  const firstChild = new Int32Array(n + 1).fill(-1);
  const nextSibling = new Int32Array(n).fill(-1);
  const byRank = Int32Array.from({ length: n }, (_, k) => k);
  byRank.sort((a, b) => at(rank, b) - at(rank, a) || b - a);
  for (const k of byRank) {
    const above = at(parent, k) === -1 ? n : at(parent, k);
    nextSibling[k] = at(firstChild, above);
    firstChild[above] = k;
  }
  const post = new Int32Array(n);
  const stack = new Int32Array(n);
  let filled = 0;
  for (let root = at(firstChild, n); root !== -1; root = at(nextSibling, root)) {
    let depth = 1;
    stack[0] = root;
    while (depth > 0) {
      const k = at(stack, depth - 1);
      const child = at(firstChild, k);
      if (child === -1) {
        post[filled++] = k;
        depth--;
      } else {
        firstChild[k] = at(nextSibling, child);
        stack[depth++] = child;
      }
    }
  }
  return post;
}

/**
 * Column heights from the leaves of the row subtrees: Gilbert, Ng, Peyton 1994, "An efficient algorithm to compute row and
 * column counts for sparse Cholesky factorization"; here each joint counts with the number of its unknowns.
 */
function heights(graph: JointGraph, order: Int32Array, place: Int32Array, parent: Int32Array): Int32Array {
  const n = order.length;
  const post = postorder(parent, new Int32Array(n));
  const firstDescendant = new Int32Array(n).fill(-1);
  const height = new Int32Array(n);
  for (let k = 0; k < n; k++) {
    const j = at(post, k);
    if (at(firstDescendant, j) === -1) height[j] = at(graph.weight, at(order, j));
    for (let i = j; i !== -1 && at(firstDescendant, i) === -1; i = at(parent, i)) firstDescendant[i] = k;
  }
  const ancestor = Int32Array.from({ length: n }, (_, k) => k);
  const lastFirst = new Int32Array(n).fill(-1);
  const lastLeaf = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    const j = at(post, k);
    const v = at(order, j);
    const up = at(parent, j);
    if (up !== -1) height[up] = at(height, up) - at(graph.weight, v);
    for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++) {
      const u = at(graph.neighbour, e);
      const i = at(place, u);
      if (i <= j || at(firstDescendant, j) <= at(lastFirst, i)) continue;
      lastFirst[i] = at(firstDescendant, j);
      height[j] = at(height, j) + at(graph.weight, u);
      const previous = at(lastLeaf, i);
      lastLeaf[i] = j;
      if (previous === -1) continue;
      const meeting = find(ancestor, previous);
      height[meeting] = at(height, meeting) - at(graph.weight, u);
    }
    if (up !== -1) ancestor[j] = up;
  }
  for (let j = 0; j < n; j++) {
    const up = at(parent, j);
    if (up !== -1) height[up] = at(height, up) + at(height, j);
  }
  return height;
}

function find(ancestor: Int32Array, from: number): number {
  let root = from;
  while (at(ancestor, root) !== root) root = at(ancestor, root);
  for (let i = from; i !== root; ) {
    const above = at(ancestor, i);
    ancestor[i] = root;
    i = above;
  }
  return root;
}

/** Multiplications and additions of the numeric factorisation: the sum of the squared column lengths. */
export function factorFlops(graph: JointGraph, tree: EliminationTree): number {
  let flops = 0;
  for (let k = 0; k < tree.order.length; k++) {
    const height = at(tree.height, k);
    const weight = at(graph.weight, at(tree.order, k));
    for (let c = 0; c < weight; c++) flops += (height - c) ** 2;
  }
  return flops;
}
