import type { ContactStatus } from "../statics/state.ts";
import type { Assumed, Condensed, CondensedSolution, Limits, Slip } from "./condensed.ts";
import { solveCondensed } from "./condensed.ts";

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
const SINGULAR = 1e-11;
/** A force or motion counts as wrong only beyond this fraction of the largest one: twice the digits rounding leaves. */
const WRONG = 1e-9;
/** A slip direction is settled when it turns by less than this, rad. */
const SLIP_TURN = 1e-7;
/** Steps that change all wrong contacts at once may fail to improve this often before single changes take over. */
const PATIENCE = 5;
/** Least-index changes end in at most 2^contacts steps, in practice in a few; this bound only guards against friction. */
const steps = (contacts: number): number => 200 + 40 * contacts;

interface Change {
  readonly contact: number;
  readonly status: ContactStatus;
  readonly slip?: Slip;
}

const unit = (x: number, y: number): readonly [number, number] => {
  const size = Math.hypot(x, y);
  return size > 0 ? [x / size, y / size] : [1, 0];
};

/** Differences below these are rounding: N and m. */
interface Tolerance {
  readonly force: number;
  readonly motion: number;
}

function tolerance(model: Condensed, s: CondensedSolution): Tolerance {
  let [force, motion] = [0, 0];
  for (const p of s.force) force = Math.max(force, Math.abs(p));
  model.links.links.forEach(({ base }, i) => {
    motion = Math.max(motion, Math.abs(s.motion[i] as number), Math.abs(s.contact[i] as number) / base);
  });
  return { force: WRONG * force, motion: WRONG * motion };
}

/** What a touching contact with friction should become when its sideways condition fails. */
function sidewaysChange(model: Condensed, k: number, now: Slip | undefined, s: CondensedSolution, tol: Tolerance) {
  const normal = model.links.normal[k] ?? 0;
  const most = (model.contacts[k]?.friction ?? 0) * (s.contact[normal] as number);
  if (!now) {
    const [x, y] = [s.contact[normal + 1] as number, s.contact[normal + 2] as number];
    if (Math.hypot(x, y) <= most + tol.force) return undefined;
    const [a, b] = unit(-x, -y); // it gives way against the force that held it, and at first in that direction only
    return {
      contact: k,
      status: "slips",
      slip: { direction: [a, b], drag: model.links.links[normal + 1]?.base ?? 0 },
    } as const;
  }
  const moved = [s.motion[normal + 1] as number, s.motion[normal + 2] as number] as const;
  const distance = Math.hypot(...moved);
  if (distance <= tol.motion) return undefined;
  const direction = unit(...moved);
  const along = now.direction[0] * direction[0] + now.direction[1] * direction[1];
  const across = Math.abs(now.direction[0] * direction[1] - now.direction[1] * direction[0]);
  if (along <= 0) return { contact: k, status: "holds" } as const;
  if (across <= SLIP_TURN) return undefined;
  return { contact: k, status: "slips", slip: { direction, drag: most / distance } } as const;
}

/** What each contact whose condition fails should become. */
function wrongOnes(model: Condensed, assumed: Assumed, s: CondensedSolution): Change[] {
  const tol = tolerance(model, s);
  const changes: Change[] = [];
  model.links.normal.forEach((normal, k) => {
    const status = assumed.status[k] ?? "open";
    const hasFriction = (model.contacts[k]?.friction ?? 0) > 0;
    if (status === "open") {
      const opening = (model.contacts[k]?.gap ?? 0) + (s.motion[normal] as number);
      if (opening < -tol.motion) changes.push({ contact: k, status: hasFriction ? "holds" : "closed" });
    } else if ((s.contact[normal] as number) < -tol.force) {
      changes.push({ contact: k, status: "open" });
    } else if (hasFriction) {
      const change = sidewaysChange(model, k, status === "slips" ? assumed.slip[k] : undefined, s, tol);
      if (change) changes.push(change);
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
 * Decides which contacts are closed. All wrong contacts change together while their number falls; when that stops
 * helping, only the first wrong one changes (least index), which cannot cycle for contacts without friction
 * (Murty 1974; block version Júdice and Pires 1994). Friction has no such guarantee: after a bounded number of steps
 * the answer is "unsettled".
 */
export function settleContacts(model: Condensed): ActiveSet {
  let assumed = firstGuess(model);
  let fewest = Infinity;
  let patience = PATIENCE;
  const most = steps(model.contacts.length);
  for (let tried = 1; tried <= most; tried++) {
    const changes = wrongOnes(model, assumed, solveCondensed(model, assumed, SEARCH));
    if (changes.length === 0) return polish(model, assumed);
    if (changes.length < fewest) {
      fewest = changes.length;
      patience = PATIENCE;
    } else if (patience > 0) patience--;
    assumed = apply(assumed, patience > 0 ? changes : changes.slice(0, 1));
  }
  return { kind: "unsettled", tried: most };
}

function polish(model: Condensed, assumed: Assumed): ActiveSet {
  for (const limits of [EXACT, SHARING]) {
    const solution = solveCondensed(model, assumed, limits);
    if (solution.smallestPivot >= SINGULAR) return { kind: "settled", assumed, solution };
  }
  return { kind: "free", assumed };
}
