import { SolveCheckFailed } from "../errors.ts";
import type { Mechanism } from "../mechanism/bodies.ts";
import type { StiffLink } from "../mechanism/find.ts";
import { findMechanisms } from "../mechanism/find.ts";
import type { Analysis } from "../sparse/analyse.ts";
import { analyse } from "../sparse/analyse.ts";
import type { Factor } from "../sparse/factorise.ts";
import { factorise } from "../sparse/factorise.ts";
import type { SymmetricMatrix } from "../sparse/symmetric-matrix.ts";
import type { Block } from "./blocks.ts";
import { diagonalOf, fastened, linkBlock, together } from "./blocks.ts";
import type { FrameParts } from "./frame.ts";
import { assemble, assembleOn, nodeOf } from "./matrix.ts";
import type { Numbering } from "./numbering.ts";
import { number, sameNumbering } from "./numbering.ts";

/** A stiffness matrix with its factor: the frame's parts and the links that are closed. */
export interface System {
  readonly numbering: Numbering;
  readonly matrix: SymmetricMatrix;
  readonly analysis: Analysis;
  readonly factor: Factor;
  readonly mechanisms: readonly Mechanism[];
}

/** Rounding of a 12 × 12 congruence stays below this fraction of the largest entry. */
const SYMMETRY_ALLOWED = 1e-12;

function checkSymmetry(blocks: Iterable<Block>): void {
  for (const { freedoms, values } of blocks) {
    const n = freedoms.length;
    let [largest, defect] = [0, 0];
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) {
        const value = values[i * n + j] as number;
        largest = Math.max(largest, Math.abs(value));
        defect = Math.max(defect, Math.abs(value - (values[j * n + i] as number)));
      }
    }
    if (!(defect <= SYMMETRY_ALLOWED * largest)) {
      throw new SolveCheckFailed("symmetry", defect / largest, SYMMETRY_ALLOWED);
    }
  }
}

/**
 * Assembles, orders and factorises the frame with the given links, and looks for mechanisms. Numbers, pattern and order of
 * elimination are taken over from `like` where they fit.
 */
export function buildSystem(parts: FrameParts, links: readonly StiffLink[], like?: System): System {
  const blocks = together(
    parts.blocks,
    links.map(({ link, stiffness }) => linkBlock(link, stiffness)),
  );
  checkSymmetry(blocks);
  const diagonal = diagonalOf(blocks, parts.fixed.length);
  const springs = [...parts.springs, ...parts.couplings, ...links].map(({ link }) => link);
  const touched = fastened(parts.table, springs, parts.fixed.length);
  for (const freedom of parts.elastic.keys()) touched[freedom] = 1;
  const numbering = number(parts.fixed, touched);
  const fitting =
    like && sameNumbering(like.numbering, numbering) ? assembleOn(like.matrix, numbering, blocks) : undefined;
  const matrix = fitting ?? assemble(numbering, blocks);
  const analysis = like && fitting ? like.analysis : analyse(matrix, nodeOf(numbering));
  const factor = factorise(analysis, matrix);
  return {
    numbering,
    matrix,
    analysis,
    factor,
    mechanisms: findMechanisms(parts, links, numbering, factor, diagonal),
  };
}
