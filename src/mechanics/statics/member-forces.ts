import { addElasticForces, COEFFICIENTS } from "../member/stiffness.ts";
import { twiceStrainEnergy } from "../member/strain-energy.ts";
import type { MemberTable } from "../member/table.ts";
import { addToNodes, endDisplacements } from "../member/transform.ts";

/** End forces of all members, local, twelve a member. */
export interface MemberEnds {
  readonly forces: Float64Array;
  /** End displacements, local, twelve a member with released ends, in the order of the table. Those of the others follow from the nodes. */
  readonly released: Float64Array;
}

/** The same, with uᵀ k u of all members at these displacements of their nodes without loads on them. */
export interface StrainedEnds extends MemberEnds {
  readonly twiceEnergy: number;
}

const nodeSide = new Float64Array(12);

/** Writes the end displacements of member m, local, for node displacements `u` and the end forces `held` asks for. */
function writeEnds(
  t: MemberTable,
  m: number,
  u: Float64Array,
  held: Float64Array | undefined,
  out: Float64Array,
  at: number,
): void {
  endDisplacements(t, m, u, out, at);
  const release = t.releases.get(m);
  if (!release) return;
  nodeSide.set(out.subarray(at, at + 12));
  for (let i = 0; i < 12; i++) {
    let sum = 0;
    for (let j = 0; j < 12; j++) {
      sum += (release.reduction[12 * i + j] as number) * (nodeSide[j] as number);
      if (held) sum -= (release.flexibility[12 * i + j] as number) * (held[12 * m + j] as number);
    }
    out[at + i] = sum;
  }
}

const own = new Float64Array(12);

/**
 * End forces for node displacements `u`; `held` are the end forces that the loads ask for when the ends are held. Released
 * components take the displacement at which their force vanishes.
 */
export function memberEnds(t: MemberTable, u: Float64Array, held: Float64Array): StrainedEnds {
  const forces = held.slice();
  const released = new Float64Array(12 * t.releases.size);
  let twiceEnergy = 0;
  for (let m = 0; m < t.count; m++) {
    writeEnds(t, m, u, held, own, 0);
    addElasticForces(t.stiffness, COEFFICIENTS * m, own, 0, forces, 12 * m);
    const release = t.releases.get(m);
    if (release) {
      released.set(own, 12 * release.place);
      unloadedEnds(t, m, u, own);
    }
    twiceEnergy += twiceStrainEnergy(t, m, own);
  }
  return { forces, released, twiceEnergy };
}

/** Writes the end displacements of member m, local, in a state with node displacements `u`. */
export function displacedEnds(t: MemberTable, m: number, u: Float64Array, ends: MemberEnds, out: Float64Array): void {
  const release = t.releases.get(m);
  if (release) out.set(ends.released.subarray(12 * release.place, 12 * release.place + 12));
  else endDisplacements(t, m, u, out, 0);
}

/** Writes the end displacements of member m, local, for node displacements `u` where no load acts on the member. */
export function unloadedEnds(t: MemberTable, m: number, u: Float64Array, out: Float64Array): void {
  writeEnds(t, m, u, undefined, out, 0);
}

/** Adds what the members exert on their nodes, reversed: the node forces that hold the members in balance. */
export function addMemberForces(t: MemberTable, forces: Float64Array, nodeForces: Float64Array): void {
  for (let m = 0; m < t.count; m++) addToNodes(t, m, forces, 12 * m, nodeForces);
}
