import type { Vec3 } from "../../geometry/vector.ts";
import { add, perpendicularPair, scale } from "../../geometry/vector.ts";
import { motion } from "../assembly/link.ts";
import { gather, scatter } from "../assembly/matrix.ts";
import { buildSystem } from "../assembly/system.ts";
import type { Frame } from "../frame.ts";
import type { AppliedCase } from "../load/applied-case.ts";
import type { Combination, Contact } from "../model.ts";
import { TOGETHER } from "../sparse/products.ts";
import { solveRefined } from "../sparse/refine.ts";
import { combineResultants } from "../statics/checks.ts";
import { recover } from "../statics/recover.ts";
import type { ContactResult, ContactStatus, State } from "../statics/state.ts";
import { ORIGIN } from "../triad.ts";
import { settleContacts } from "./active-set.ts";
import { closedLinks } from "./closed.ts";
import type { CondensedSolution } from "./condensed.ts";

/** Answers of the frame to a unit force on each contact link, computed once and used by all combinations. */
export interface ContactAnswers {
  /** Displacements (six a node) for each link. */
  readonly displacements: readonly Float64Array[];
  readonly flexibility: Float64Array;
}

export function condenseContacts(frame: Frame): ContactAnswers {
  const { numbering, matrix, factor } = frame.system;
  const { links } = frame.contacts;
  const full = new Float64Array(numbering.unknownOf.length);
  const displacements: Float64Array[] = [];
  // A few at a time: hundreds of feet on thousands of bars would fill memory with right-hand sides.
  for (let first = 0; first < links.length; first += TOGETHER) {
    const some = links.slice(first, first + TOGETHER);
    const rhs = new Float64Array(numbering.count * some.length);
    some.forEach(({ link }, i) => {
      full.fill(0);
      link.freedoms.forEach((freedom, j) => {
        full[freedom] = (full[freedom] as number) + (link.weights[j] as number);
      });
      gather(numbering, full, rhs, i * numbering.count);
    });
    const { x } = solveRefined(factor, matrix, rhs, some.length);
    some.forEach((_, i) => {
      const own = new Float64Array(numbering.unknownOf.length);
      scatter(numbering, x, i * numbering.count, own);
      displacements.push(own);
    });
  }
  const flexibility = new Float64Array(links.length * links.length);
  links.forEach(({ link }, i) => {
    displacements.forEach((u, j) => {
      flexibility[i * links.length + j] = motion(link, u);
    });
  });
  return { displacements, flexibility };
}

const weightedSum = (parts: readonly Float64Array[], factors: ArrayLike<number>, length: number): Float64Array => {
  const sum = new Float64Array(length);
  parts.forEach((part, c) => {
    const factor = factors[c] ?? 0;
    if (factor !== 0) for (let i = 0; i < length; i++) sum[i] = (sum[i] as number) + factor * (part[i] as number);
  });
  return sum;
};

function results(
  frame: Frame,
  contacts: readonly Contact[],
  status: readonly ContactStatus[],
  solution: CondensedSolution,
): ContactResult[] {
  return contacts.map((contact, c) => {
    const normal = frame.contacts.normal[c] ?? 0;
    const own = status[c] ?? "open";
    let sideways: Vec3 = ORIGIN;
    if (own === "holds" || own === "slips") {
      perpendicularPair(contact.normal).forEach((side, i) => {
        sideways = add(sideways, scale(side, solution.contact[normal + 1 + i] as number));
      });
    }
    const push = own === "open" ? 0 : (solution.contact[normal] as number);
    return { status: own, push, sideways, opening: contact.gap + (solution.motion[normal] as number) };
  });
}

/** Solves one combination with its own set of closed contacts and, where given, its own gaps. Throws SolveCheckFailed. */
export function solveWithContacts(
  frame: Frame,
  answers: ContactAnswers,
  cases: readonly AppliedCase[],
  displacements: readonly Float64Array[],
  factors: Combination,
  gaps?: readonly number[],
): State {
  const { links } = frame.contacts;
  const given = frame.model.contacts ?? [];
  const contacts = gaps ? given.map((contact, c) => ({ ...contact, gap: gaps[c] ?? contact.gap })) : given;
  const loaded = weightedSum(displacements, factors, frame.system.numbering.unknownOf.length);
  const found = settleContacts({
    contacts,
    links: frame.contacts,
    flexibility: answers.flexibility,
    motion: Float64Array.from(links, ({ link }) => motion(link, loaded)),
  });
  if (found.kind === "unsettled") return { kind: "unsettled", tried: found.tried };
  const { status } = found.assumed;
  if (found.kind === "free") {
    const { mechanisms } = buildSystem(frame.parts, closedLinks(frame.contacts, contacts, status), frame.system);
    return { kind: "mechanism", mechanisms };
  }
  const u = weightedSum(answers.displacements, found.solution.force, loaded.length).map(
    (value, f) => value + (loaded[f] as number),
  );
  const contactForce = found.solution.contact.map((force, i) => (isOpen(frame, status, i) ? 0 : force));
  const acting = {
    held: weightedSum(
      cases.map((c) => c.held),
      factors,
      12 * frame.parts.table.count,
    ),
    onNodes: weightedSum(
      cases.map((c) => c.onNodes),
      factors,
      loaded.length,
    ),
    total: weightedSum(
      cases.map((c) => c.total),
      factors,
      loaded.length,
    ),
    resultant: combineResultants(cases.map((c, i) => [factors[i] ?? 0, c.resultant] as const)),
    contactForce,
  };
  return recover(frame, u, acting, results(frame, contacts, status, found.solution));
}

const isOpen = (frame: Frame, status: readonly ContactStatus[], link: number): boolean =>
  status[frame.contacts.links[link]?.contact ?? 0] === "open";
