import { addAlong, motion } from "../assembly/link.ts";
import { gather, scatter } from "../assembly/matrix.ts";
import { condenseContacts, solveWithContacts } from "../contact/solve.ts";
import type { Frame } from "../frame.ts";
import type { AppliedCase } from "../load/applied-case.ts";
import type { Factored } from "../member/fields.ts";
import type { Combination, ContactTerms, LoadCase } from "../model.ts";
import { solveRefined } from "../sparse/refine.ts";
import { applyCase } from "./applied.ts";
import { addMemberForces, memberEnds } from "./member-forces.ts";
import { checkReciprocity } from "./reciprocity.ts";
import type { Acting } from "./recover.ts";
import { recover } from "./recover.ts";
import type { SolvedState, State } from "./state.ts";
import { superpose } from "./superpose.ts";

/** All combinations of a frame, solved. */
export interface Solution {
  readonly frame: Frame;
  readonly cases: readonly AppliedCase[];
  readonly combinations: readonly Combination[];
  /** For each combination the loads that act in it. */
  readonly factored: readonly Factored[];
  /** One for each combination. */
  readonly states: readonly State[];
}

const NO_CONTACTS = new Float64Array(0);

/** Forces that prescribed displacements put on the free freedoms: K u for u at the settled supports alone. */
function settlementForces(frame: Frame, settled: Float64Array): Float64Array {
  const { table, springs, couplings } = frame.parts;
  const forces = new Float64Array(settled.length);
  addMemberForces(table, memberEnds(table, settled, new Float64Array(12 * table.count)).forces, forces);
  for (const { link, stiffness } of [...springs, ...couplings])
    addAlong(link, stiffness * motion(link, settled), forces);
  for (const { link, base } of frame.contacts.links) addAlong(link, base * motion(link, settled), forces);
  return forces;
}

/** Displacements of every load case (six a node) with all contacts at their base stiffness. */
function solveCases(frame: Frame, cases: readonly AppliedCase[]): Float64Array[] {
  const { numbering, matrix, factor } = frame.system;
  const n = numbering.count;
  const rhs = new Float64Array(n * cases.length);
  cases.forEach((applied, c) => {
    let load = applied.total;
    if (applied.settled) {
      const settling = settlementForces(frame, applied.settled);
      load = load.map((force, f) => force - (settling[f] as number));
    }
    gather(numbering, load, rhs, c * n);
  });
  const { x } = solveRefined(factor, matrix, rhs, cases.length);
  return cases.map((applied, c) => {
    const full = applied.settled?.slice() ?? new Float64Array(applied.total.length);
    scatter(numbering, x, c * n, full);
    return full;
  });
}

const actingAlone = (applied: AppliedCase): Acting => ({ ...applied, contactForce: NO_CONTACTS });

/**
 * Solves every combination of load cases. Without contacts the cases are solved and superposed; with contacts each
 * combination finds its own set of closed contacts, on its own terms where `terms` has some for it.
 * A frame with mechanisms gives "mechanism" for all combinations.
 * Throws SolveCheckFailed when a solution does not satisfy its own equations, MechanicsInputError for impossible loads.
 */
export function solveFrame(
  frame: Frame,
  loadCases: readonly LoadCase[],
  combinations: readonly Combination[],
  terms: readonly (ContactTerms | undefined)[] = [],
): Solution {
  const cases = loadCases.map((loadCase) => applyCase(frame.parts, frame.system.numbering, loadCase));
  const factored = combinations.map(
    (factors): Factored =>
      cases.flatMap(({ onMembers }, c) => {
        const factor = factors[c] ?? 0;
        return factor === 0 || onMembers.loaded.length === 0 ? [] : [[factor, onMembers] as const];
      }),
  );
  const solution = { frame, cases, combinations, factored };
  if (frame.mechanisms.length > 0) {
    const moving = { kind: "mechanism", mechanisms: frame.mechanisms } as const;
    return { ...solution, states: combinations.map(() => moving) };
  }
  const displacements = solveCases(frame, cases);
  if (frame.contacts.links.length > 0) {
    const condensed = condenseContacts(frame);
    const states = combinations.map((factors, i) =>
      solveWithContacts(frame, condensed, cases, displacements, factors, terms[i]),
    );
    return { ...solution, states };
  }
  checkReciprocity(cases, displacements);
  const solved: SolvedState[] = cases.map((applied, c) => {
    return recover(frame, displacements[c] ?? NO_CONTACTS, actingAlone(applied), []);
  });
  return { ...solution, states: combinations.map((factors) => superpose(solved, factors)) };
}
