import { at } from "./at.ts";
import type { SymmetricMatrix } from "./symmetric-matrix.ts";

/** Which joints are coupled. Neighbours of joint v: `neighbour[start[v]] … neighbour[start[v + 1] - 1]`, never v itself. */
export interface JointGraph {
  readonly joints: number;
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** Unknowns a joint carries. */
  readonly weight: Int32Array;
}

/** A matrix seen as a graph of joints: the unknowns of joint v are `unknown[first[v]] … unknown[first[v + 1] - 1]`. */
export interface Joints {
  readonly graph: JointGraph;
  readonly jointOf: Int32Array;
  readonly first: Int32Array;
  readonly unknown: Int32Array;
}

/**
 * Groups the unknowns of a matrix by joint. An ordering of a few thousand joints costs a fraction of one of their unknowns
 * and keeps the six unknowns of a joint side by side, which is what makes dense blocks.
 * Without `nodeOf`, unknowns coupled to the very same unknowns count as one joint (Ashcraft 1995, "Compressed graphs and
 * the minimum degree algorithm"). A poor grouping costs time, never correctness.
 */
export function groupByJoint(matrix: SymmetricMatrix, nodeOf?: Int32Array): Joints {
  const { n } = matrix;
  if (nodeOf !== undefined && nodeOf.length !== n)
    throw new RangeError(`${nodeOf.length} joints given for ${n} unknowns`);
  const keys = nodeOf ?? likeness(matrix);
  const number = new Map<number, number>();
  const jointOf = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    const key = keys[i] as number;
    let joint = number.get(key);
    if (joint === undefined) {
      joint = number.size;
      number.set(key, joint);
    }
    jointOf[i] = joint;
  }
  const joints = number.size;
  const weight = new Int32Array(joints);
  for (const v of jointOf) weight[v] = at(weight, v) + 1;
  const first = new Int32Array(joints + 1);
  for (let v = 0; v < joints; v++) first[v + 1] = at(first, v) + at(weight, v);
  const next = first.slice(0, joints);
  const unknown = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    const v = at(jointOf, i);
    const place = at(next, v);
    unknown[place] = i;
    next[v] = place + 1;
  }
  return { graph: { joints, weight, ...neighbours(matrix, jointOf, joints) }, jointOf, first, unknown };
}

function neighbours(
  matrix: SymmetricMatrix,
  jointOf: Int32Array,
  joints: number,
): Pick<JointGraph, "start" | "neighbour"> {
  const { n, colStart, rowIndex } = matrix;
  const repeated = new Int32Array(joints + 1);
  for (let j = 0; j < n; j++) {
    const v = at(jointOf, j);
    for (let e = at(colStart, j); e < at(colStart, j + 1); e++) {
      const u = at(jointOf, at(rowIndex, e));
      if (u === v) continue;
      repeated[u + 1] = at(repeated, u + 1) + 1;
      repeated[v + 1] = at(repeated, v + 1) + 1;
    }
  }
  for (let v = 0; v < joints; v++) repeated[v + 1] = at(repeated, v + 1) + at(repeated, v);
  const next = repeated.slice(0, joints);
  const all = new Int32Array(at(repeated, joints));
  for (let j = 0; j < n; j++) {
    const v = at(jointOf, j);
    for (let e = at(colStart, j); e < at(colStart, j + 1); e++) {
      const u = at(jointOf, at(rowIndex, e));
      if (u === v) continue;
      all[at(next, u)] = v;
      all[at(next, v)] = u;
      next[u] = at(next, u) + 1;
      next[v] = at(next, v) + 1;
    }
  }
  const seenBy = new Int32Array(joints).fill(-1);
  const start = new Int32Array(joints + 1);
  let filled = 0;
  for (let v = 0; v < joints; v++) {
    for (let e = at(repeated, v); e < at(repeated, v + 1); e++) {
      const u = at(all, e);
      if (at(seenBy, u) === v) continue;
      seenBy[u] = v;
      all[filled++] = u;
    }
    start[v + 1] = filled;
  }
  return { start, neighbour: all.slice(0, filled) };
}

const GOLDEN = 0x9e3779b1; // 2^32 divided by the golden ratio: spreads consecutive integers (Knuth, TAOCP 3, 6.4)
const LOW_BITS = 0x1fffff; // 21 bits beside 32 fill the 53 of a double exactly
const TWO_32 = 2 ** 32;

/** One number per unknown, equal for unknowns with equal sets of neighbours (and itself), else almost surely different. */
function likeness(matrix: SymmetricMatrix): Float64Array {
  const { n, colStart, rowIndex } = matrix;
  const sums = new Int32Array(n);
  const mixed = new Int32Array(n);
  const meet = (i: number, j: number): void => {
    const h = Math.imul(j + 1, GOLDEN);
    sums[i] = at(sums, i) + Math.imul(h ^ (h >>> 15), GOLDEN);
    mixed[i] = at(mixed, i) ^ Math.imul(h ^ (h >>> 13), GOLDEN + 2);
  };
  for (let j = 0; j < n; j++) {
    meet(j, j);
    for (let e = at(colStart, j); e < at(colStart, j + 1); e++) {
      const i = at(rowIndex, e);
      if (i === j) continue;
      meet(i, j);
      meet(j, i);
    }
  }
  const key = new Float64Array(n);
  for (let i = 0; i < n; i++) key[i] = (at(sums, i) >>> 0) + (at(mixed, i) & LOW_BITS) * TWO_32;
  return key;
}
