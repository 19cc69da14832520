import type { ContactStatus } from "../statics/state.ts";
import type { Assumed, Condensed, CondensedSolution, ContactState, Limits, Slip } from "./condensed.ts";
import { solveStates } from "./condensed.ts";
import { sidewaysChange, tolerance } from "./sideways.ts";

const MOST_ROUNDS = 60;
const MOST_STEPS = 60;
/** From this round on bounds move half way only, which calms rounds that swing to and fro. */
const CALM_FROM = 8;
/** Bounds that change by less than this fraction of the largest one stand. */
const SETTLED = 1e-9;

const NO_SLIP: Slip = { direction: [1, 0], drag: 0 };

/** Normal and sideways conditions apart: with a fixed bound a contact holds sideways whether it pushes or not. */
function improved(
  model: Condensed,
  states: readonly ContactState[],
  bounds: readonly number[],
  s: CondensedSolution,
): { readonly states: readonly ContactState[]; readonly wrong: number } {
  const tol = tolerance(model, s);
  let wrong = 0;
  const next = states.map((state, k): ContactState => {
    const normal = model.links.normal[k] ?? 0;
    const bound = bounds[k] ?? 0;
    const opening = (model.contacts[k]?.gap ?? 0) + (s.motion[normal] as number);
    const flips = state.closed ? (s.contact[normal] as number) < -tol.force : opening < -tol.motion;
    const closed = flips ? !state.closed : state.closed;
    let { side } = state;
    let turns = false;
    if (side !== "free") {
      const change = sidewaysChange(model, k, side === "hold" ? undefined : side, bound, s, tol);
      // Without any friction force the direction of a slip is of no account.
      if (change && !(bound === 0 && typeof side === "object")) [side, turns] = [change, true];
    }
    if (flips || turns) wrong++;
    return { closed, side, bound };
  });
  return { states: next, wrong };
}

/** Contacts with fixed sideways bounds (Tresca's friction): a convex problem, settled by changing all that is wrong. */
function settleBounded(model: Condensed, start: readonly ContactState[], bounds: readonly number[], limits: Limits) {
  let states = start.map((state, k): ContactState => ({ ...state, bound: bounds[k] ?? 0 }));
  let solution = solveStates(model, states, limits);
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = improved(model, states, bounds, solution);
    if (next.wrong === 0) break;
    states = [...next.states];
    solution = solveStates(model, states, limits);
  }
  return { states, solution };
}

function asAssumed(model: Condensed, states: readonly ContactState[]): Assumed {
  return {
    status: states.map(({ closed, side }, k): ContactStatus => {
      if (!closed) return "open";
      if ((model.contacts[k]?.friction ?? 0) === 0) return "closed";
      return typeof side === "object" ? "slips" : "holds";
    }),
    slip: states.map(({ side }) => (typeof side === "object" ? side : NO_SLIP)),
  };
}

/**
 * Guesses for a contact problem with friction. Each round fixes what every contact can hold sideways, solves that, and
 * takes friction × push as the next bound (Panagiotopoulos 1975). The first round holds everything.
 */
export function* frictionRounds(model: Condensed, limits: Limits): Generator<Assumed> {
  let states: readonly ContactState[] = model.contacts.map(({ gap, friction = 0 }) => ({
    closed: gap <= 0,
    side: friction > 0 ? "hold" : "free",
  }));
  let bounds: readonly number[] = model.contacts.map(() => Infinity);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const settled = settleBounded(model, states, bounds, limits);
    states = settled.states;
    const next = model.contacts.map(({ friction = 0 }, k) => {
      const push = settled.solution.contact[model.links.normal[k] ?? 0] as number;
      const bound = states[k]?.closed ? friction * Math.max(push, 0) : 0;
      const before = bounds[k] ?? 0;
      return round >= CALM_FROM && Number.isFinite(before) ? (bound + before) / 2 : bound;
    });
    yield asAssumed(model, states);
    const [change, largest] = next.reduce<readonly [number, number]>(
      ([off, most], bound, k) => [Math.max(off, Math.abs(bound - (bounds[k] ?? 0))), Math.max(most, bound)],
      [0, 0],
    );
    if (change <= SETTLED * largest) return;
    bounds = next;
  }
}
