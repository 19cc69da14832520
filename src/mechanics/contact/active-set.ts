import type { ContactStatus } from "../statics/state.ts";
import type { Assumed, Condensed, CondensedSolution, Limits, Slip } from "./condensed.ts";
import { solveCondensed } from "./condensed.ts";
import { frictionRounds } from "./friction-rounds.ts";
import { givingWay, sidewaysChange, tolerance } from "./sideways.ts";

/** The contacts settled: every condition holds. */
export interface Settled {
  readonly kind: "settled";
  readonly assumed: Assumed;
  readonly solution: CondensedSolution;
}

/** The contacts are decided but leave the frame free to move, or (friction only) no decision satisfies all conditions. */
export type ActiveSet =
  | Settled
  | { readonly kind: "free"; readonly assumed: Assumed }
  | { readonly kind: "unsettled"; readonly tried: number };

/** During the search nothing is quite free or quite rigid; results are then computed without that. */
const SEARCH: Limits = { left: 1e-8, rigid: 1e8 };
const EXACT: Limits = { left: 0, rigid: Infinity };
/** Where rigid contacts touch in more points than can be told apart, they yield this little: error 1e-8 at most. */
const SHARING: Limits = { left: 0, rigid: 1e8 };
/** Pivots of the condensed equations below this mean a free motion; contacts that share a load leave 1e-8. */
const SINGULAR = 1e-9;
/** Steps that change all wrong contacts at once may fail to improve this often before single changes take over. */
const PATIENCE = 5;
/** Steps of a search; without friction least-index changes end by themselves, in practice in a few. */
const steps = (contacts: number): number => 60 + 10 * contacts;

interface Change {
  readonly contact: number;
  readonly status: ContactStatus;
  readonly slip?: Slip;
}

/**
 * A contact that has to close again closes slipping, in the direction it last slipped or was pulled: closed at a standstill
 * its sideways hold can pull it open again, round and round.
 */
function closing(model: Condensed, assumed: Assumed, k: number): Change {
  const slip = assumed.slip[k];
  if ((model.contacts[k]?.friction ?? 0) === 0) return { contact: k, status: "closed" };
  return slip && slip.drag > 0 ? { contact: k, status: "slips", slip } : { contact: k, status: "holds" };
}

function opening(model: Condensed, assumed: Assumed, k: number, s: CondensedSolution): Change {
  const slip = assumed.status[k] === "holds" ? givingWay(model, k, s) : assumed.slip[k];
  const hasFriction = (model.contacts[k]?.friction ?? 0) > 0;
  return { contact: k, status: "open", ...(hasFriction && slip ? { slip } : {}) };
}

/** What each contact whose condition fails should become. */
function wrongOnes(model: Condensed, assumed: Assumed, s: CondensedSolution): Change[] {
  const tol = tolerance(model, s);
  const changes: Change[] = [];
  model.links.normal.forEach((normal, k) => {
    const status = assumed.status[k] ?? "open";
    const { gap = 0, friction = 0 } = model.contacts[k] ?? {};
    const push = s.contact[normal] as number;
    if (status === "open") {
      if (gap + (s.motion[normal] as number) < -tol.motion) changes.push(closing(model, assumed, k));
    } else if (push < -tol.force) {
      changes.push(opening(model, assumed, k, s));
    } else if (friction > 0) {
      const now = status === "slips" ? assumed.slip[k] : undefined;
      const change = sidewaysChange(model, k, now, friction * push, s, tol);
      if (change === "hold") changes.push({ contact: k, status: "holds" });
      else if (change) changes.push({ contact: k, status: "slips", slip: change });
    }
  });
  return changes;
}

const NO_SLIP: Slip = { direction: [1, 0], drag: 0 };

function apply(assumed: Assumed, changes: readonly Change[]): Assumed {
  const status = [...assumed.status];
  const slip = [...assumed.slip];
  for (const change of changes) {
    status[change.contact] = change.status;
    slip[change.contact] = change.slip ?? NO_SLIP;
  }
  return { status, slip };
}

/** Contacts without a gap start closed, those with a gap open. */
function firstGuess(model: Condensed): Assumed {
  return {
    status: model.contacts.map(({ gap, friction = 0 }) => (gap > 0 ? "open" : friction > 0 ? "holds" : "closed")),
    slip: model.contacts.map(() => NO_SLIP),
  };
}

/**
 * Changes contacts from a first guess until every condition holds. All wrong contacts change together while their number
 * falls; when that stops helping, only the first wrong one changes (least index), which cannot cycle for contacts without
 * friction (Murty 1974; block version Júdice and Pires 1994).
 */
function search(model: Condensed, guess: Assumed, most: number): Assumed | undefined {
  let assumed = guess;
  let fewest = Infinity;
  let patience = PATIENCE;
  for (let step = 0; step < most; step++) {
    const changes = wrongOnes(model, assumed, solveCondensed(model, assumed, SEARCH));
    if (changes.length === 0) return assumed;
    if (changes.length < fewest) {
      fewest = changes.length;
      patience = PATIENCE;
    } else if (patience > 0) patience--;
    assumed = apply(assumed, patience > 0 ? changes : changes.slice(0, 1));
  }
  return undefined;
}

/**
 * Decides which contacts are closed, and which slip. With friction the search may go round in circles; then guesses come
 * from rounds in which each contact holds sideways up to a fixed force (friction-rounds.ts). If none of them leads to a
 * state in which every condition holds, the answer is "unsettled".
 */
export function settleContacts(model: Condensed): ActiveSet {
  const found = search(model, firstGuess(model), steps(model.contacts.length));
  if (found) return polish(model, found);
  let tried = 0;
  for (const guess of frictionRounds(model, SEARCH)) {
    tried++;
    const settled = search(model, guess, STEPS_FROM_ROUND);
    if (settled) return polish(model, settled);
  }
  return { kind: "unsettled", tried };
}

/** From a guess that is nearly right the search takes a few steps or none at all. */
const STEPS_FROM_ROUND = 12;

/** A frame that stands hardly feels the last share of the base springs; one that is free moves as they let it. */
const STANDS = 0.1;

function polish(model: Condensed, assumed: Assumed): ActiveSet {
  const searched = solveCondensed(model, assumed, SEARCH);
  const size = (most: number, w: number): number => Math.max(most, Math.abs(w));
  const largest = Math.max(searched.motion.reduce(size, 0), model.motion.reduce(size, 0));
  for (const limits of [EXACT, SHARING]) {
    const solution = solveCondensed(model, assumed, limits);
    const change = solution.motion.reduce((most, w, i) => size(most, w - (searched.motion[i] as number)), 0);
    if (solution.smallestPivot >= SINGULAR && change <= STANDS * largest) return { kind: "settled", assumed, solution };
  }
  return { kind: "free", assumed };
}
