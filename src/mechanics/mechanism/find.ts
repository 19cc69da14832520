import type { FrameParts } from "../assembly/frame.ts";
import type { Link } from "../assembly/link.ts";
import { motion } from "../assembly/link.ts";
import { scatter } from "../assembly/matrix.ts";
import type { Numbering } from "../assembly/numbering.ts";
import { twiceStrainEnergy } from "../member/strain-energy.ts";
import type { Factor } from "../sparse/factorise.ts";
import { nullVector } from "../sparse/null-vector.ts";
import { unloadedEnds } from "../statics/member-forces.ts";
import type { Mechanism } from "./bodies.ts";
import { looseMembers, mechanismOf } from "./bodies.ts";

/** A link that takes part in the stiffness besides those of the frame's parts. */
export interface StiffLink {
  readonly link: Link;
  readonly stiffness: number;
}

const ends = new Float64Array(12);

function energyOfMembers({ table }: FrameParts, u: Float64Array): number {
  let sum = 0;
  for (let m = 0; m < table.count; m++) {
    unloadedEnds(table, m, u, ends);
    sum += twiceStrainEnergy(table, m, ends);
  }
  return sum;
}

/** uᵀ K u of the whole frame, from changes of shape alone; `members` is the share of its members. */
export function twiceEnergy(
  parts: FrameParts,
  extra: readonly StiffLink[],
  u: Float64Array,
  members = energyOfMembers(parts, u),
): number {
  let sum = members;
  for (const { link, stiffness } of parts.springs) sum += stiffness * motion(link, u) ** 2;
  for (const { link, stiffness } of parts.couplings) sum += stiffness * motion(link, u) ** 2;
  for (const { link, stiffness } of extra) sum += stiffness * motion(link, u) ** 2;
  for (const [freedom, stiffness] of parts.elastic) sum += stiffness * (u[freedom] as number) ** 2;
  return sum;
}

/**
 * Energy of a motion beside that of moving each freedom alone. A motion without strain leaves the square of rounding
 * errors (about 1e-30, with the growth of errors in the factor below 1e-24); the softest mode of a chain of n equal
 * members leaves about 1/n⁴, 1e-16 for ten thousand.
 */
const STRAIN_FREE = 1e-21;

/** Mechanisms that are listed at most: a frame with more is not mended one by one. */
const MOST_LISTED = 100;
/** Tiny pivots that are looked into at most; a mechanism beyond them would show as a solution that fails its checks. */
const MOST_TRIED = 400;

/** Each motion takes the value one at its own unknown and zero at the others', which keeps separate mechanisms apart. */
function separate(vectors: Float64Array[], unknowns: readonly number[]): void {
  for (let a = 0; a < vectors.length; a++) {
    const own = vectors[a] as Float64Array;
    const pivot = own[unknowns[a] as number] as number;
    for (let i = 0; i < own.length; i++) own[i] = (own[i] as number) / pivot;
    for (let b = 0; b < vectors.length; b++) {
      const other = vectors[b] as Float64Array;
      const factor = other[unknowns[a] as number] as number;
      if (b === a || factor === 0) continue;
      for (let i = 0; i < own.length; i++) other[i] = (other[i] as number) - factor * (own[i] as number);
    }
  }
}

/**
 * The independent motions of the frame that nothing resists, as data, a hundred at most. Tiny pivots that do carry strain
 * are no mechanisms.
 */
export function findMechanisms(
  parts: FrameParts,
  extra: readonly StiffLink[],
  numbering: Numbering,
  factor: Factor,
  diagonal: Float64Array,
): Mechanism[] {
  const found = looseMembers(parts).slice(0, MOST_LISTED);
  const unknowns: number[] = [];
  const vectors: Float64Array[] = [];
  const full = new Float64Array(numbering.unknownOf.length);
  for (const { unknown } of factor.pivots.suspicious.slice(0, MOST_TRIED)) {
    if (found.length + vectors.length === MOST_LISTED) break;
    const v = nullVector(factor, unknown);
    scatter(numbering, v, 0, full);
    let apart = 0;
    for (let f = 0; f < full.length; f++) apart += (diagonal[f] as number) * (full[f] as number) ** 2;
    if (twiceEnergy(parts, extra, full) > STRAIN_FREE * apart) continue;
    unknowns.push(unknown);
    vectors.push(v);
  }
  separate(vectors, unknowns);
  for (const v of vectors) {
    scatter(numbering, v, 0, full);
    found.push(mechanismOf(parts, full));
  }
  return found;
}
