import { type DenseFactor, denseFactor, denseSolve } from "../dense.ts";
import type { Contact } from "../model.ts";
import type { ContactStatus } from "../statics/state.ts";
import type { ContactLinks } from "./links.ts";

/**
 * The frame seen from its contacts. With every link at its base stiffness d the frame answers link forces p with link
 * motions w = w0 + F p. A contact force λ is what is left of p when the base spring is taken out: λ = p − d w.
 */
export interface Condensed {
  readonly contacts: readonly Contact[];
  readonly links: ContactLinks;
  readonly answers: LinkAnswers;
  /** Motion of the links under the loads alone. */
  readonly motion: Float64Array;
}

/** How all links move when one of them is pushed; found when it is asked for. */
export interface LinkAnswers {
  /** Finds the answers of these links together, which is cheaper than one by one. */
  find(links: readonly number[]): void;
  /** Motion of every link per unit force on this one, m/N. */
  motions(link: number): Float64Array;
}

/** How a slipping contact is assumed to move: unit direction on its two sides, and the force per sideways motion across it, N/m. */
export interface Slip {
  readonly direction: readonly [number, number];
  readonly drag: number;
}

/** What is assumed of each contact; `slip` matters where the status is "slips". */
export interface Assumed {
  readonly status: readonly ContactStatus[];
  readonly slip: readonly Slip[];
}

export interface CondensedSolution {
  /** p of each link: what the loaded frame feels beside its base springs. */
  readonly force: Float64Array;
  readonly motion: Float64Array;
  /** λ of each link. */
  readonly contact: Float64Array;
  /** Near zero when the frame without the open contacts has a free motion. */
  readonly smallestPivot: number;
}

/** One link's part in a condition: a·p + c·w. */
interface Term {
  readonly link: number;
  readonly a: number;
  readonly c: number;
}

/** Σ terms = rhs; one for each link. */
interface Condition {
  readonly terms: readonly Term[];
  readonly rhs: number;
}

/** λ times `factor`, where a share `left` of the base spring stays in. */
const contactForce = (model: Condensed, link: number, left = 0, factor = 1): Term => {
  const base = model.links.links[link]?.base ?? 0;
  return { link, a: factor, c: -factor * base * (1 - left) };
};

/** What the equations take for "not at all". */
export interface Limits {
  /**
   * Share of the base stiffness that stays in open and slipping links: a tiny one keeps the equations solvable while the
   * search passes through states that cannot stand.
   */
  readonly left: number;
  /**
   * Stiffness of rigid contacts in units of the base; Infinity or a large number. Yielding a little, contacts that touch
   * in more points than a rigid node has freedoms share their load as equal springs do.
   */
  readonly rigid: number;
}

/** λ = −stiffness (gap + w), divided by the stiffness in units of the base. */
function closedCondition(model: Condensed, link: number, gap: number, stiffness: number): Condition {
  const base = model.links.links[link]?.base ?? 1;
  const k = stiffness / base;
  return { terms: [{ link, a: 1 / k, c: base - base / k }], rhs: -base * gap };
}

/** Links between freedoms that supports hold cannot move; theirs is no condition to solve. */
const cannotMove = (model: Condensed, link: number): boolean => {
  const own = model.answers.motions(link)[link] as number;
  return own * (model.links.links[link]?.base ?? 0) < Number.EPSILON;
};

/** What the equations are told of one contact. */
export interface ContactState {
  readonly closed: boolean;
  /** Sideways: not resisted, held still, or slipping. */
  readonly side: "free" | "hold" | Slip;
  /** Sideways force of a slipping contact, N; friction × push when absent. */
  readonly bound?: number;
}

/**
 * A slipping contact pulls with friction × push (or a given force) against its direction s. The direction itself follows
 * the motion; its first-order change, drag = force / |motion| on the motion across s, makes the search for it Newton's.
 */
function slipConditions(model: Condensed, k: number, slip: Slip, bound: number | undefined, left: number): Condition[] {
  const normal = model.links.normal[k] ?? 0;
  const [x, y] = slip.direction;
  const across = [-y, x] as const;
  return [0, 1].map((side) => {
    const turn = slip.drag * (across[side] ?? 0);
    const along = side === 0 ? x : y;
    const terms = [
      contactForce(model, normal + 1 + side, left),
      { link: normal + 1, a: 0, c: turn * across[0] },
      { link: normal + 2, a: 0, c: turn * across[1] },
    ];
    if (bound !== undefined) return { terms, rhs: -bound * along };
    return { terms: [...terms, contactForce(model, normal, 0, (model.contacts[k]?.friction ?? 0) * along)], rhs: 0 };
  });
}

function conditions(model: Condensed, states: readonly ContactState[], { left, rigid }: Limits): Condition[] {
  const all: Condition[] = [];
  const rigidly = (link: number): number => rigid * (model.links.links[link]?.base ?? 1);
  model.links.normal.forEach((normal, k) => {
    const contact = model.contacts[k];
    const state = states[k];
    if (!contact || !state) return;
    if (!state.closed) all.push({ terms: [contactForce(model, normal, left)], rhs: 0 });
    else all.push(closedCondition(model, normal, contact.gap, contact.stiffness ?? rigidly(normal)));
    if ((contact.friction ?? 0) === 0) return;
    if (typeof state.side === "object") all.push(...slipConditions(model, k, state.side, state.bound, left));
    else {
      for (const link of [normal + 1, normal + 2]) {
        if (state.side === "free") all.push({ terms: [contactForce(model, link, left)], rhs: 0 });
        else all.push(closedCondition(model, link, 0, contact.hold ?? rigidly(link)));
      }
    }
  });
  return all;
}

/** Whether a link needs nothing beside its base spring: then p is zero. */
const isIdle = ({ terms, rhs }: Condition): boolean => rhs === 0 && terms.every(({ c }) => c === 0);

/** Forces and motions of the contacts for assumed statuses. */
export function solveCondensed(model: Condensed, assumed: Assumed, limits: Limits): CondensedSolution {
  const states = assumed.status.map((status, k): ContactState => {
    const side = status === "slips" ? (assumed.slip[k] ?? "hold") : status === "holds" ? "hold" : "free";
    return { closed: status !== "open", side };
  });
  return solveStates(model, states, limits);
}

/** What the left sides of the equations hang on; undefined where some contact slips in a direction of its own. */
function sameLeftSides(
  states: readonly ContactState[],
  working: readonly number[],
  { left, rigid }: Limits,
): string | undefined {
  let key = `${left} ${rigid} ${working.join(" ")} `;
  for (const { closed, side } of states) {
    if (typeof side === "object") return undefined;
    key += `${closed ? "c" : "o"}${side === "hold" ? "h" : "f"}`;
  }
  return key;
}

/** Factors of the latest equations of a frame: most combinations leave the same contacts closed. */
const factors = new WeakMap<LinkAnswers, Map<string, DenseFactor>>();
const KEPT = 8;

/** The equations of the links that work, in their order. */
function factorOf(
  model: Condensed,
  all: readonly Condition[],
  working: readonly number[],
  key: string | undefined,
): DenseFactor {
  const known = factors.get(model.answers) ?? new Map<string, DenseFactor>();
  factors.set(model.answers, known);
  const found = key === undefined ? undefined : known.get(key);
  if (found) return found;
  const n = working.length;
  const place = new Map(working.map((link, i) => [link, i]));
  const matrix = new Float64Array(n * n);
  working.forEach((own, i) => {
    for (const { link, a, c } of all[own]?.terms ?? []) {
      const at = place.get(link);
      if (at !== undefined) matrix[i * n + at] = (matrix[i * n + at] as number) + a;
      if (c === 0) continue;
      // By reciprocity how this link moves under the others is how they move under it.
      const motions = model.answers.motions(link);
      working.forEach((other, j) => {
        matrix[i * n + j] = (matrix[i * n + j] as number) + c * (motions[other] as number);
      });
    }
  });
  const factor = denseFactor(matrix, n);
  if (key !== undefined) {
    if (known.size >= KEPT) known.clear();
    known.set(key, factor);
  }
  return factor;
}

/** Forces and motions of the contacts for given states. */
export function solveStates(model: Condensed, states: readonly ContactState[], limits: Limits): CondensedSolution {
  const { links, answers, motion } = model;
  const n = links.links.length;
  const all = conditions(model, states, limits);
  const busy = all.flatMap((condition, link) => (isIdle(condition) ? [] : [link]));
  answers.find(busy);
  const working = busy.filter((link) => !cannotMove(model, link));
  const rhs = Float64Array.from(working, (link) => {
    const { terms, rhs: own } = all[link] as Condition;
    return terms.reduce((sum, term) => sum - term.c * (motion[term.link] as number), own);
  });
  const factor = factorOf(model, all, working, sameLeftSides(states, working, limits));
  const solved = denseSolve(factor, rhs);
  const force = new Float64Array(n);
  const total = Float64Array.from(motion);
  working.forEach((link, k) => {
    const p = solved[k] as number;
    force[link] = p;
    const motions = answers.motions(link);
    for (let i = 0; i < n; i++) total[i] = (total[i] as number) + (motions[i] as number) * p;
  });
  const contact = force.map((p, i) => p - (links.links[i]?.base ?? 0) * (total[i] as number));
  return { force, motion: total, contact, smallestPivot: factor.smallestPivot };
}
