import { at } from "./at.ts";
import type { JointGraph } from "./joint-graph.ts";

/** Joints coupled to more than this many times √joints others go last, unseen by the rest; each would be gone through at
 * every step otherwise (the bound is that of Amestoy, Davis, Duff 2004, Algorithm 837: AMD). */
const HUB_DEGREE = 10;
const LEAST_HUB_DEGREE = 16;

/**
 * Approximate minimum degree order of the joints: Amestoy, Davis, Duff 1996, "An approximate minimum degree ordering
 * algorithm", on the quotient graph of George and Liu 1989, "The evolution of the minimum degree ordering algorithm".
 * An eliminated joint becomes an element: the list of the joints it coupled. Joints that cannot be told apart are merged.
 */
export function minimumDegree(graph: JointGraph): Int32Array {
  const { joints } = graph;
  const list = graph.neighbour.slice();
  const length = new Int32Array(joints);
  const elementCount = new Int32Array(joints); // the first so many of a joint's list are elements, the rest joints
  const weight = graph.weight.slice(); // 0 once eliminated or merged into another
  const member: Int32Array[] = new Array<Int32Array>(joints); // by element: the joints it couples
  const elementWeight = new Int32Array(joints);
  const alive = new Uint8Array(joints); // by element
  const mergedInto = new Int32Array(joints).fill(-1);
  const outside = new Int32Array(joints); // by element: weight outside the pivot's element
  const outsideSeen = new Int32Array(joints).fill(-1);
  const inPivot = new Int32Array(joints).fill(-1);
  const degree = new Int32Array(joints);
  const pivots = new Int32Array(joints);
  const buffer = new Int32Array(joints + 1);
  const hubDegree = Math.max(LEAST_HUB_DEGREE, HUB_DEGREE * Math.sqrt(joints));
  const hubs: number[] = [];
  let total = 0;
  for (let v = 0; v < joints; v++) {
    length[v] = at(graph.start, v + 1) - at(graph.start, v);
    total += at(weight, v);
    if (at(length, v) <= hubDegree) continue;
    hubs.push(v);
    total -= at(weight, v);
    weight[v] = 0;
  }
  const queue = degreeQueue(joints, total);
  for (let v = joints - 1; v >= 0; v--) {
    if (at(weight, v) === 0) continue;
    for (let e = at(graph.start, v); e < at(graph.start, v + 1); e++)
      degree[v] = at(degree, v) + at(weight, at(list, e));
    queue.insert(v, at(degree, v));
  }

  let remaining = total;
  let steps = 0;
  for (let pivot = queue.takeLeast(); pivot !== -1; pivot = queue.takeLeast(), steps++) {
    pivots[steps] = pivot;
    inPivot[pivot] = steps;
    const coupled = gather(pivot);
    let coupledWeight = 0;
    for (const v of coupled) coupledWeight += at(weight, v);
    remaining -= at(weight, pivot);
    weight[pivot] = 0;
    measureOutside(coupled);
    let kept = 0;
    const byHash = new Map<number, number[]>();
    for (const v of coupled) {
      queue.remove(v);
      const hash = rewrite(v, pivot);
      if (hash === -1) {
        // Coupled to nothing but the pivot's element: eliminated with it at no cost.
        remaining -= at(weight, v);
        coupledWeight -= at(weight, v);
        weight[v] = 0;
        mergedInto[v] = pivot;
        continue;
      }
      coupled[kept++] = v;
      const alike = byHash.get(hash);
      if (alike === undefined) byHash.set(hash, [v]);
      else alike.push(v);
    }
    for (const alike of byHash.values()) if (alike.length > 1) mergeAlike(alike);
    const members = coupled.subarray(0, kept).filter((v) => at(weight, v) > 0);
    for (const v of members) {
      const others = coupledWeight - at(weight, v);
      const bound = Math.min(at(degree, v) + others, remaining - at(weight, v));
      degree[v] = bound;
      queue.insert(v, bound);
    }
    member[pivot] = members;
    elementWeight[pivot] = coupledWeight;
    alive[pivot] = 1;
  }
  for (const v of hubs) pivots[steps++] = v;
  return expand(pivots.subarray(0, steps), mergedInto);

  /** The joints coupled by eliminating the pivot; its elements are absorbed by the new one. */
  function gather(pivot: number): Int32Array {
    const from = at(graph.start, pivot);
    let count = 0;
    const meet = (v: number): void => {
      if (at(weight, v) === 0 || at(inPivot, v) === steps) return;
      inPivot[v] = steps;
      buffer[count++] = v;
    };
    for (let e = 0; e < at(elementCount, pivot); e++) {
      const element = at(list, from + e);
      if (alive[element] === 0) continue;
      for (const v of member[element] as Int32Array) meet(v);
      alive[element] = 0;
    }
    for (let e = at(elementCount, pivot); e < at(length, pivot); e++) meet(at(list, from + e));
    return buffer.slice(0, count);
  }

  function measureOutside(coupled: Int32Array): void {
    for (const v of coupled) {
      const from = at(graph.start, v);
      for (let e = 0; e < at(elementCount, v); e++) {
        const element = at(list, from + e);
        if (alive[element] === 0) continue;
        if (at(outsideSeen, element) !== steps) {
          outsideSeen[element] = steps;
          outside[element] = at(elementWeight, element);
        }
        outside[element] = at(outside, element) - at(weight, v);
      }
    }
  }

  /** Brings the list of a coupled joint up to date; gives its hash, or −1 where nothing but the new element is left. */
  function rewrite(v: number, pivot: number): number {
    const from = at(graph.start, v);
    let bound = 0;
    let hash = pivot;
    let count = 0;
    buffer[count++] = pivot;
    for (let e = 0; e < at(elementCount, v); e++) {
      const element = at(list, from + e);
      if (alive[element] === 0) continue;
      const beyond = at(outside, element);
      if (beyond === 0) {
        alive[element] = 0; // holds nothing the new element does not hold
        continue;
      }
      bound += beyond;
      hash += element;
      buffer[count++] = element;
    }
    const elements = count;
    for (let e = at(elementCount, v); e < at(length, v); e++) {
      const u = at(list, from + e);
      if (at(weight, u) === 0 || at(inPivot, u) === steps) continue;
      bound += at(weight, u);
      hash += u;
      buffer[count++] = u;
    }
    // The list never outgrows its room: the pivot, or an element it absorbed, left it.
    list.set(buffer.subarray(0, count), from);
    elementCount[v] = elements;
    length[v] = count;
    degree[v] = Math.min(at(degree, v), bound);
    return bound === 0 ? -1 : hash;
  }

  function mergeAlike(alike: readonly number[]): void {
    for (let a = 0; a < alike.length; a++) {
      const v = alike[a] as number;
      if (at(weight, v) === 0) continue;
      const from = at(graph.start, v);
      const marks = new Set(list.subarray(from, from + at(length, v)));
      for (let b = a + 1; b < alike.length; b++) {
        const u = alike[b] as number;
        if (at(weight, u) === 0 || at(length, u) !== at(length, v) || at(elementCount, u) !== at(elementCount, v))
          continue;
        const other = at(graph.start, u);
        let same = true;
        for (let e = 0; e < at(length, u) && same; e++) same = marks.has(at(list, other + e));
        if (!same) continue;
        weight[v] = at(weight, v) + at(weight, u);
        weight[u] = 0;
        mergedInto[u] = v;
      }
    }
  }
}

interface DegreeQueue {
  insert(v: number, degree: number): void;
  remove(v: number): void;
  /** Takes out the joint of least degree, or gives −1 when empty. */
  takeLeast(): number;
}

function degreeQueue(joints: number, highest: number): DegreeQueue {
  const head = new Int32Array(highest + 1).fill(-1);
  const next = new Int32Array(joints).fill(-1);
  const previous = new Int32Array(joints).fill(-1);
  const bucket = new Int32Array(joints).fill(-1);
  let least = 0;
  const remove = (v: number): void => {
    const after = at(next, v);
    const before = at(previous, v);
    if (after !== -1) previous[after] = before;
    if (before !== -1) next[before] = after;
    else head[at(bucket, v)] = after;
  };
  return {
    insert(v, degree) {
      const first = at(head, degree);
      bucket[v] = degree;
      previous[v] = -1;
      next[v] = first;
      if (first !== -1) previous[first] = v;
      head[degree] = v;
      if (degree < least) least = degree;
    },
    remove,
    takeLeast() {
      while (least <= highest && at(head, least) === -1) least++;
      if (least > highest) return -1;
      const v = at(head, least);
      remove(v);
      return v;
    },
  };
}

/** The joints in order of elimination: each pivot, then all that were merged into it. */
function expand(pivots: Int32Array, mergedInto: Int32Array): Int32Array {
  const joints = mergedInto.length;
  const rank = new Int32Array(joints).fill(-1);
  for (let k = 0; k < pivots.length; k++) rank[at(pivots, k)] = k;
  const count = new Int32Array(pivots.length + 1);
  for (let v = 0; v < joints; v++) {
    let root = v;
    while (at(mergedInto, root) !== -1) root = at(mergedInto, root);
    for (let u = v; u !== root; ) {
      const above = at(mergedInto, u);
      mergedInto[u] = root;
      u = above;
    }
    rank[v] = at(rank, root);
    count[at(rank, v) + 1] = at(count, at(rank, v) + 1) + 1;
  }
  for (let k = 0; k < pivots.length; k++) count[k + 1] = at(count, k + 1) + at(count, k);
  const order = new Int32Array(joints);
  for (let v = 0; v < joints; v++) {
    const slot = at(count, at(rank, v));
    order[slot] = v;
    count[at(rank, v)] = slot + 1;
  }
  return order;
}
