import { assembleOnPattern, assembleSymmetric, type ElementBlock } from "../sparse/assemble.ts";
import type { SymmetricMatrix } from "../sparse/symmetric-matrix.ts";
import type { Block } from "./blocks.ts";
import type { Numbering } from "./numbering.ts";

/** Sums blocks on node freedoms into the matrix of the unknowns. */
export function assemble(numbering: Numbering, blocks: Iterable<Block>): SymmetricMatrix {
  return assembleSymmetric(numbering.count, onUnknowns(numbering, blocks));
}

/** The same sum with the pattern of a matrix of these unknowns; undefined where that has no place for some entry. */
export function assembleOn(
  pattern: SymmetricMatrix,
  numbering: Numbering,
  blocks: Iterable<Block>,
): SymmetricMatrix | undefined {
  return assembleOnPattern(pattern, onUnknowns(numbering, blocks));
}

/** The blocks on the unknowns; may be gone through more than once, and each is good until the next is asked for. */
function onUnknowns({ unknownOf }: Numbering, blocks: Iterable<Block>): Iterable<ElementBlock> {
  return {
    *[Symbol.iterator]() {
      let unknowns = new Int32Array(0);
      for (const { freedoms, values } of blocks) {
        if (unknowns.length !== freedoms.length) unknowns = new Int32Array(freedoms.length);
        for (let i = 0; i < freedoms.length; i++) unknowns[i] = unknownOf[freedoms[i] as number] as number;
        yield { unknowns, values };
      }
    },
  };
}

/** Node of each unknown; unknowns of one node are ordered together. */
export const nodeOf = (numbering: Numbering): Int32Array =>
  numbering.freedomOf.map((freedom) => Math.floor(freedom / 6));

/** Values of all node freedoms taken to the unknowns. */
export function gather(numbering: Numbering, full: Float64Array, out: Float64Array, at: number): void {
  for (let i = 0; i < numbering.count; i++) out[at + i] = full[numbering.freedomOf[i] as number] as number;
}

/** Values of unknowns written into all node freedoms; the others keep what they hold. */
export function scatter(numbering: Numbering, unknowns: Float64Array, at: number, full: Float64Array): void {
  for (let i = 0; i < numbering.count; i++) full[numbering.freedomOf[i] as number] = unknowns[at + i] as number;
}
