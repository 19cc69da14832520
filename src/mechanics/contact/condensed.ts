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
  /** Motion of link i per unit force on link j, by rows, m/N. */
  readonly flexibility: Float64Array;
  /** Motion of the links under the loads alone. */
  readonly motion: Float64Array;
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
  const n = model.links.links.length;
  const own = model.flexibility[link * n + link] as number;
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
        else all.push(closedCondition(model, link, 0, rigidly(link)));
      }
    }
  });
  return all.map((condition, link) =>
    cannotMove(model, link) ? { terms: [{ link, a: 1, c: 0 }], rhs: 0 } : condition,
  );
}

/** Forces and motions of the contacts for assumed statuses. */
export function solveCondensed(model: Condensed, assumed: Assumed, limits: Limits): CondensedSolution {
  const states = assumed.status.map((status, k): ContactState => {
    const side = status === "slips" ? (assumed.slip[k] ?? "hold") : status === "holds" ? "hold" : "free";
    return { closed: status !== "open", side };
  });
  return solveStates(model, states, limits);
}

/** What the left sides of the equations hang on; undefined where some contact slips in a direction of its own. */
function sameLeftSides(states: readonly ContactState[], { left, rigid }: Limits): string | undefined {
  let key = `${left} ${rigid} `;
  for (const { closed, side } of states) {
    if (typeof side === "object") return undefined;
    key += `${closed ? "c" : "o"}${side === "hold" ? "h" : "f"}`;
  }
  return key;
}

/** Factors of the latest equations of a frame: most combinations leave the same contacts closed. */
const factors = new WeakMap<Float64Array, Map<string, DenseFactor>>();
const KEPT = 8;

function factorOf(model: Condensed, all: readonly Condition[], key: string | undefined): DenseFactor {
  const known = factors.get(model.flexibility) ?? new Map<string, DenseFactor>();
  factors.set(model.flexibility, known);
  const found = key === undefined ? undefined : known.get(key);
  if (found) return found;
  const n = model.links.links.length;
  const matrix = new Float64Array(n * n);
  all.forEach(({ terms }, i) => {
    for (const { link, a, c } of terms) {
      matrix[i * n + link] = (matrix[i * n + link] as number) + a;
      for (let j = 0; j < n; j++) {
        matrix[i * n + j] = (matrix[i * n + j] as number) + c * (model.flexibility[link * n + j] as number);
      }
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
  const { links, flexibility, motion } = model;
  const n = links.links.length;
  const all = conditions(model, states, limits);
  const rhs = Float64Array.from(all, ({ terms, rhs: own }) =>
    terms.reduce((sum, { link, c }) => sum - c * (motion[link] as number), own),
  );
  const factor = factorOf(model, all, sameLeftSides(states, limits));
  const force = denseSolve(factor, rhs);
  const total = new Float64Array(n);
  const contact = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let w = motion[i] as number;
    for (let j = 0; j < n; j++) w += (flexibility[i * n + j] as number) * (force[j] as number);
    total[i] = w;
    contact[i] = (force[i] as number) - (links.links[i]?.base ?? 0) * w;
  }
  return { force, motion: total, contact, smallestPivot: factor.smallestPivot };
}
