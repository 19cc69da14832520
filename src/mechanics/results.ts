import type { Deflections, Factored, InternalForces } from "./member/fields.ts";
import { deflections, internalForces } from "./member/fields.ts";
import type { Solution } from "./statics/solve.ts";
import type { SolvedState } from "./statics/state.ts";

function loadsOn(solution: Solution, combination: number, member: number): Factored {
  const factors = solution.combinations[combination] ?? [];
  const found: (readonly [number, NonNullable<ReturnType<Solution["cases"][number]["byMember"]["get"]>>])[] = [];
  factors.forEach((factor, c) => {
    if (factor === 0) return;
    const loads = solution.cases[c]?.byMember.get(member);
    if (loads) found.push([factor, loads]);
  });
  return found;
}

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
  return internalForces(length, ends.forces, 12 * member, loadsOn(solution, combination, member));
}

/** Exact displacements along a member, local axes, m and rad. `forces` saves computing them again. */
export function memberDeflections(
  solution: Solution,
  combination: number,
  member: number,
  forces: InternalForces = memberForces(solution, combination, member),
): Deflections {
  const own = solution.frame.model.members[member];
  if (!own) throw new RangeError(`member ${member} does not exist`);
  const { ends } = solvedState(solution, combination);
  return deflections(own, forces, ends.displacements, 12 * member, loadsOn(solution, combination, member));
}
