import { COEFFICIENTS, fillStiffness } from "../member/stiffness.ts";
import type { MemberTable } from "../member/table.ts";
import { congruence, rigidTransformation, transformation } from "../member/transform.ts";
import type { Link } from "./link.ts";

/** A symmetric share of a frame matrix on node freedoms (6 · node + component), by rows. */
export interface Block {
  readonly freedoms: Int32Array;
  readonly values: Float64Array;
}

function memberFreedoms(t: MemberTable, m: number, freedoms = new Int32Array(12)): Int32Array {
  for (let i = 0; i < 6; i++) {
    freedoms[i] = 6 * (t.from[m] as number) + i;
    freedoms[6 + i] = 6 * (t.to[m] as number) + i;
  }
  return freedoms;
}

const T = new Float64Array(144);
const local = new Float64Array(144);

/** The block of member `m` for a `matrix` (12 × 12, on the ends of its flexible part, releases not yet applied). */
export function memberBlock(t: MemberTable, m: number, matrix: Float64Array): Block {
  const values = new Float64Array(144);
  transformation(t, m, T);
  congruence(matrix, T, values);
  return { freedoms: memberFreedoms(t, m), values };
}

/** The stiffness of each member; may be gone through more than once, and each block is good until the next is asked for. */
export function stiffnessBlocks(t: MemberTable): Iterable<Block> {
  // One stretch of memory for all: thousands of objects are what memory would be searched through time and again.
  const all = new Float64Array(144 * t.count);
  for (let m = 0; m < t.count; m++) {
    const values = all.subarray(144 * m, 144 * (m + 1));
    rigidTransformation(t, m, T);
    const released = t.releases.get(m)?.stiffness;
    if (!released) fillStiffness(t.stiffness, COEFFICIENTS * m, local);
    congruence(released ?? local, T, values);
  }
  return {
    *[Symbol.iterator]() {
      const freedoms = new Int32Array(12);
      for (let m = 0; m < t.count; m++)
        yield { freedoms: memberFreedoms(t, m, freedoms), values: all.subarray(144 * m, 144 * (m + 1)) };
    },
  };
}

/** Blocks of the one and then of the other; what holds for the blocks of each holds for these. */
export function together(first: Iterable<Block>, then: Iterable<Block>): Iterable<Block> {
  return {
    *[Symbol.iterator]() {
      yield* first;
      yield* then;
    },
  };
}

/**
 * Freedoms that some member end, spring or contact is fastened to, whether or not it resists: a bar with a hinge about
 * its own axis at one end is fastened to the node at the other and carries it along.
 */
export function fastened(t: MemberTable, links: Iterable<Link>, freedoms: number): Uint8Array {
  const flags = new Uint8Array(freedoms);
  for (let m = 0; m < t.count; m++) {
    const release = t.releases.get(m);
    const own = memberFreedoms(t, m);
    if (!release) {
      for (const freedom of own) flags[freedom] = 1;
      continue;
    }
    rigidTransformation(t, m, T);
    for (let i = 0; i < 12; i++) {
      if ((release.mask & (1 << i)) !== 0) continue;
      for (let j = 0; j < 12; j++) if (Math.abs(T[12 * i + j] as number) > TOUCHES) flags[own[j] as number] = 1;
    }
  }
  for (const { freedoms: own, weights } of links) {
    own.forEach((freedom, i) => {
      if (Math.abs(weights[i] as number) > TOUCHES) flags[freedom] = 1;
    });
  }
  return flags;
}

/** Direction cosines (and arms in m) below this are rounding of axes that are meant to be square to each other. */
const TOUCHES = 1e-9;

/** Adds stiffness × link ⊗ link to the values of a block on the freedoms of the link. */
export function addLink({ weights }: Link, stiffness: number, values: Float64Array): void {
  const n = weights.length;
  for (let i = 0; i < n; i++) {
    const factor = stiffness * (weights[i] as number);
    if (factor === 0) continue;
    for (let j = 0; j < n; j++) values[n * i + j] = (values[n * i + j] as number) + factor * (weights[j] as number);
  }
}

/** stiffness × link ⊗ link. */
export function linkBlock(link: Link, stiffness: number): Block {
  const values = new Float64Array(link.freedoms.length ** 2);
  addLink(link, stiffness, values);
  return { freedoms: link.freedoms, values };
}

/** The diagonal of the sum of blocks over all node freedoms. */
export function diagonalOf(blocks: Iterable<Block>, freedoms: number): Float64Array {
  const diagonal = new Float64Array(freedoms);
  for (const { freedoms: own, values } of blocks) {
    for (let i = 0; i < own.length; i++) {
      const f = own[i] as number;
      diagonal[f] = (diagonal[f] as number) + (values[i * own.length + i] as number);
    }
  }
  return diagonal;
}
