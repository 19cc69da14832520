import { addElasticForces, COEFFICIENTS } from "../member/stiffness.ts";
import type { MemberTable } from "../member/table.ts";
import { addToNodes, endDisplacements } from "../member/transform.ts";

/** End displacements and end forces of all members, local, twelve a member. */
export interface MemberEnds {
  readonly displacements: Float64Array;
  readonly forces: Float64Array;
}

const nodeSide = new Float64Array(12);

/**
 * End displacements and end forces for node displacements `u`; `held` are the end forces that the loads ask for when
 * the ends are held. Released components take the displacement at which their force vanishes.
 */
export function memberEnds(t: MemberTable, u: Float64Array, held: Float64Array): MemberEnds {
  const displacements = new Float64Array(12 * t.count);
  const forces = held.slice();
  for (let m = 0; m < t.count; m++) {
    const at = 12 * m;
    endDisplacements(t, m, u, displacements, at);
    const release = t.releases.get(m);
    if (release) {
      nodeSide.set(displacements.subarray(at, at + 12));
      for (let i = 0; i < 12; i++) {
        let sum = 0;
        for (let j = 0; j < 12; j++) {
          sum += (release.reduction[12 * i + j] as number) * (nodeSide[j] as number);
          sum -= (release.flexibility[12 * i + j] as number) * (held[at + j] as number);
        }
        displacements[at + i] = sum;
      }
    }
    addElasticForces(t.stiffness, COEFFICIENTS * m, displacements, at, forces, at);
  }
  return { displacements, forces };
}

/** End displacements of all members for node displacements `u` where no load acts on the members. */
export function memberDisplacements(t: MemberTable, u: Float64Array): Float64Array {
  return memberEnds(t, u, new Float64Array(12 * t.count)).displacements;
}

/** Adds what the members exert on their nodes, reversed: the node forces that hold the members in balance. */
export function addMemberForces(t: MemberTable, forces: Float64Array, nodeForces: Float64Array): void {
  for (let m = 0; m < t.count; m++) addToNodes(t, m, forces, 12 * m, nodeForces);
}
