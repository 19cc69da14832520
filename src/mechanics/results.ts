import type { Deflections, InternalForces } from "./member/fields.ts";
import { deflections, internalForces } from "./member/fields.ts";
import { displacedEnds } from "./statics/member-forces.ts";
import type { Solution } from "./statics/solve.ts";
import type { SolvedState } from "./statics/state.ts";

/** The state of a combination; throws RangeError when it was not solved (a mechanism, or unsettled). */
export function solvedState(solution: Solution, combination: number): SolvedState {
  const state = solution.states[combination];
  if (state?.kind !== "solved") throw new RangeError(`combination ${combination} has no solution`);
  return state;
}

/** Exact internal forces along a member, stations from the start of its flexible part. N, N·m. */
export function memberForces(solution: Solution, combination: number, member: number): InternalForces {
  const { ends } = solvedState(solution, combination);
  const length = solution.frame.parts.table.length[member];
  if (length === undefined) throw new RangeError(`member ${member} does not exist`);
  return internalForces(length, ends.forces, member, solution.factored[combination] ?? []);
}

const atEnds = new Float64Array(12);

/** Exact displacements along a member, local axes, m and rad. `forces` saves computing them again. */
export function memberDeflections(
  solution: Solution,
  combination: number,
  member: number,
  forces: InternalForces = memberForces(solution, combination, member),
): Deflections {
  const own = solution.frame.model.members[member];
  if (!own) throw new RangeError(`member ${member} does not exist`);
  const { ends, displacements } = solvedState(solution, combination);
  displacedEnds(solution.frame.parts.table, member, displacements, ends, atEnds);
  return deflections(own, forces, atEnds, member, solution.factored[combination] ?? []);
}
