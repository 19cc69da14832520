import { addAlong, motion } from "../assembly/link.ts";
import { HELD } from "../assembly/numbering.ts";
import type { Frame } from "../frame.ts";
import type { NodeForces } from "../load/applied-case.ts";
import type { Resultant } from "../load/resultant.ts";
import { twiceEnergy } from "../mechanism/find.ts";
import { GROUND } from "../model.ts";
import { addNodeForces } from "./applied.ts";
import { demand, demandPrecision, equilibriumDefect, largestForce, largestOnNodes, share } from "./checks.ts";
import { addMemberForces, memberEnds } from "./member-forces.ts";
import type { ContactResult, SolvedState } from "./state.ts";

/** What acts on the frame in one solution. */
export interface Acting {
  readonly held: Float64Array;
  readonly onNodes: NodeForces;
  readonly total: Float64Array;
  readonly resultant: Resultant;
  /** Contact forces by link; empty without contacts. */
  readonly contactForce: Float64Array;
}

/** Force and energy that rounding the displacements to doubles stands for. */
function roundingOf(diagonal: Float64Array, u: Float64Array): { readonly force: number; readonly energy: number } {
  let [force, energy] = [0, 0];
  for (let f = 0; f < u.length; f++) {
    const own = Number.EPSILON * (diagonal[f] as number) * Math.abs(u[f] as number);
    energy += own * Math.abs(u[f] as number);
    if (f % 6 < 3 && own > force) force = own;
  }
  return { force, energy };
}

/** Length by which moments are measured as forces. */
function frameSize(frame: Frame): number {
  let longest = 0;
  for (const length of frame.parts.table.length) longest = Math.max(longest, length);
  return longest || 1;
}

/** What is worked with for each solution and kept for none. */
const scratch = { balance: new Float64Array(0), ground: new Float64Array(0) };

function cleared(name: keyof typeof scratch, length: number): Float64Array {
  if (scratch[name].length !== length) scratch[name] = new Float64Array(length);
  return scratch[name].fill(0);
}

/**
 * Member forces, reactions and the checks of one solution. Everything is formed member by member from the
 * displacements, not from the assembled matrix, so the checks see errors of assembly and of the factor alike.
 * Throws SolveCheckFailed.
 */
export function recover(
  frame: Frame,
  u: Float64Array,
  acting: Acting,
  contacts: readonly ContactResult[],
): SolvedState {
  const { parts } = frame;
  const ends = memberEnds(parts.table, u, acting.held);
  const balance = cleared("balance", u.length); // what supports must add at each freedom
  addMemberForces(parts.table, ends.forces, balance);
  const ground = cleared("ground", u.length);
  const springs = new Float64Array(6 * (frame.model.springs ?? []).length);
  for (const { spring, component, link, stiffness } of parts.springs) {
    const force = -stiffness * motion(link, u);
    springs[6 * spring + component] = force;
    addAlong(link, -force, balance);
    if (frame.model.springs?.[spring]?.to === GROUND) addAlong(link, force, ground);
  }
  const couplings = new Float64Array(parts.couplings.length);
  for (const [i, { link, stiffness }] of parts.couplings.entries()) {
    couplings[i] = stiffness * motion(link, u);
    addAlong(link, couplings[i] as number, balance);
  }
  frame.contacts.links.forEach(({ contact, link }, i) => {
    const force = acting.contactForce[i] as number;
    addAlong(link, -force, balance);
    if (frame.model.contacts?.[contact]?.to === GROUND) addAlong(link, force, ground);
  });
  addNodeForces(acting.onNodes, -1, balance);
  const reactions = new Float64Array(u.length);
  for (const [freedom, stiffness] of parts.elastic) reactions[freedom] = -stiffness * (u[freedom] as number);
  let work = 0;
  let workScale = 0;
  const { unknownOf } = frame.system.numbering;
  for (let f = 0; f < u.length; f++) {
    if (unknownOf[f] === HELD) {
      reactions[f] = balance[f] as number;
      balance[f] = 0;
      const own = ((acting.total[f] as number) + (reactions[f] as number)) * (u[f] as number);
      work += own;
      workScale += Math.abs(own);
    } else {
      balance[f] = (balance[f] as number) - (reactions[f] as number);
      const own = (acting.total[f] as number) * (u[f] as number);
      work += own;
      workScale += Math.abs(own);
    }
    ground[f] = (ground[f] as number) + (reactions[f] as number);
  }
  frame.contacts.links.forEach(({ link }, i) => {
    const own = (acting.contactForce[i] as number) * motion(link, u);
    work += own;
    workScale += Math.abs(own);
  });
  const energy = twiceEnergy(parts, [], u, ends.twiceEnergy);
  const size = frameSize(frame);
  const rounding = roundingOf(parts.diagonal, u);
  const loads = largestForce(acting.held, size) + largestOnNodes(acting.onNodes, size);
  const inside = loads + largestForce(ends.forces, size);
  demandPrecision(rounding.force, loads);
  const blur = share(rounding.force, inside);
  const equilibrium = equilibriumDefect(frame.model, acting.resultant, ground, inside, size);
  const energySum = workScale + energy;
  const quality = {
    residual: demand("residual", share(largestForce(balance, size), inside), blur),
    equilibrium: demand("equilibrium", equilibrium, blur),
    energy: demand("energy", share(Math.abs(energy - work), energySum), share(rounding.energy, energySum)),
  };
  return { kind: "solved", displacements: u, reactions, ends, springs, couplings, contacts, quality };
}
