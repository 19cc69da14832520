import type { Vec3 } from "../../geometry/vector.ts";
import { add, perpendicularPair, scale } from "../../geometry/vector.ts";
import { addAlong, motion } from "../assembly/link.ts";
import { gather, scatter } from "../assembly/matrix.ts";
import { buildSystem } from "../assembly/system.ts";
import type { Frame } from "../frame.ts";
import type { AppliedCase, NodeForces } from "../load/applied-case.ts";
import type { Combination, Contact, ContactTerms } from "../model.ts";
import { TOGETHER } from "../sparse/products.ts";
import { solveRefined } from "../sparse/refine.ts";
import { combineResultants } from "../statics/checks.ts";
import { recover } from "../statics/recover.ts";
import type { ContactResult, ContactStatus, State } from "../statics/state.ts";
import { ORIGIN } from "../triad.ts";
import { settleContacts } from "./active-set.ts";
import { closedLinks } from "./closed.ts";
import type { CondensedSolution, LinkAnswers } from "./condensed.ts";
import type { ContactLink } from "./links.ts";

/** Answers of the frame to a unit force on a contact link, computed when first asked for and used by all combinations. */
export interface ContactAnswers extends LinkAnswers {
  /** Displacements (six a node). */
  displacements(link: number): Float64Array;
}

/** Answers asked for at once: what is worked on is shared by so many. */
const AT_ONCE = 8 * TOGETHER;

export function condenseContacts(frame: Frame): ContactAnswers {
  const { numbering, matrix, factor } = frame.system;
  const { links } = frame.contacts;
  const full = new Float64Array(numbering.unknownOf.length);
  const found = new Map<number, { readonly displacements: Float64Array; readonly motions: Float64Array }>();
  const answer = (link: number) => {
    const known = found.get(link);
    if (!known) throw new RangeError(`the answer of contact link ${link} was not asked for`);
    return known;
  };
  return {
    find(wanted) {
      const missing = wanted.filter((link) => !found.has(link));
      // Some at a time: hundreds of feet on thousands of bars would fill memory with right-hand sides.
      for (let first = 0; first < missing.length; first += AT_ONCE) {
        const some = missing.slice(first, first + AT_ONCE);
        const rhs = new Float64Array(numbering.count * some.length);
        some.forEach((pushed, i) => {
          full.fill(0);
          const link = links[pushed]?.link;
          if (link) addAlong(link, 1, full);
          gather(numbering, full, rhs, i * numbering.count);
        });
        const { x } = solveRefined(factor, matrix, rhs, some.length);
        some.forEach((pushed, i) => {
          const displacements = new Float64Array(numbering.unknownOf.length);
          scatter(numbering, x, i * numbering.count, displacements);
          const motions = new Float64Array(links.length);
          for (let i = 0; i < motions.length; i++) motions[i] = motion((links[i] as ContactLink).link, displacements);
          found.set(pushed, { displacements, motions });
        });
      }
    },
    displacements: (link) => answer(link).displacements,
    motions: (link) => answer(link).motions,
  };
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

/** The contacts as one combination meets them. */
const metBy = (contacts: readonly Contact[], { gaps, friction }: ContactTerms): readonly Contact[] =>
  contacts.map((contact, c) => ({
    ...contact,
    gap: gaps?.[c] ?? contact.gap,
    ...(contact.friction && friction ? { friction } : {}),
  }));

/** Solves one combination with its own set of closed contacts and, where given, on its own terms. Throws SolveCheckFailed. */
export function solveWithContacts(
  frame: Frame,
  answers: ContactAnswers,
  cases: readonly AppliedCase[],
  displacements: readonly Float64Array[],
  factors: Combination,
  terms?: ContactTerms,
): State {
  const { links } = frame.contacts;
  const given = frame.model.contacts ?? [];
  const contacts = terms ? metBy(given, terms) : given;
  const loaded = weightedSum(displacements, factors, frame.system.numbering.unknownOf.length);
  const found = settleContacts({
    contacts,
    links: frame.contacts,
    answers,
    motion: Float64Array.from(links, ({ link }) => motion(link, loaded)),
  });
  if (found.kind === "unsettled") return { kind: "unsettled", tried: found.tried };
  const { status } = found.assumed;
  if (found.kind === "free") {
    const { mechanisms } = buildSystem(frame.parts, closedLinks(frame.contacts, contacts, status), frame.system);
    return { kind: "mechanism", mechanisms };
  }
  const u = loaded;
  found.solution.force.forEach((force, link) => {
    if (force === 0) return;
    const own = answers.displacements(link);
    for (let f = 0; f < u.length; f++) u[f] = (u[f] as number) + force * (own[f] as number);
  });
  const contactForce = found.solution.contact.map((force, i) => (isOpen(frame, status, i) ? 0 : force));
  const acting = {
    held: weightedSum(
      cases.map((c) => c.held),
      factors,
      12 * frame.parts.table.count,
    ),
    onNodes: onNodes(cases, factors),
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

function onNodes(cases: readonly AppliedCase[], factors: Combination): NodeForces {
  return {
    freedoms: cases.flatMap((c) => c.onNodes.freedoms),
    values: cases.flatMap((c, i) => c.onNodes.values.map((value) => (factors[i] ?? 0) * value)),
  };
}

const isOpen = (frame: Frame, status: readonly ContactStatus[], link: number): boolean =>
  status[frame.contacts.links[link]?.contact ?? 0] === "open";
