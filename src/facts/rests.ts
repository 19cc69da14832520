import type { Frame as Prepared } from "../mechanics/frame.ts";
import type { LoadCase } from "../mechanics/model.ts";
import { type Buckling, bucklingOf } from "../mechanics/stability/buckling.ts";
import { type Solution, solveFrame } from "../mechanics/statics/solve.ts";
import type { Combined } from "./combinations.ts";
import { MORE_FRICTION, TEETH } from "./floor-friction.ts";

/** How the frame comes to rest under one combination: state `index` of a solution. */
export interface Rest {
  readonly solution: Solution;
  readonly whole: Buckling;
  readonly index: number;
}

/**
 * All combinations, each with the coefficient of friction that `frictionOf` gives it. A frame that turns on the floor, or for
 * whose feet no state of rest is found, is taken as held by more and more friction, until only tipping is left; `pinned` are its
 * feet held sideways whether they stand or not, for which there is always a state.
 */
export function restsOf(
  prepared: Prepared,
  pinned: () => Prepared,
  cases: readonly LoadCase[],
  wanted: readonly Combined[],
  frictionOf: (one: Combined) => number,
): readonly Rest[] {
  const rests: Rest[] = [];
  const rubs = (prepared.model.contacts ?? []).some(({ friction = 0 }) => friction > 0);
  /** Those that more friction may bring to rest. */
  const solve = (frame: Prepared, some: readonly number[], more: number): readonly number[] => {
    if (some.length === 0) return some;
    const those = some.map((c) => wanted[c] as Combined);
    const solution = solveFrame(
      frame,
      cases,
      those.map(({ factors }) => factors),
      those.map((one) => ({
        friction: Math.min(TEETH, more * frictionOf(one)),
        ...(one.gaps ? { gaps: one.gaps } : {}),
      })),
    );
    const whole = bucklingOf(solution);
    for (const [index, c] of some.entries()) rests[c] = { solution, whole, index };
    return some.filter((_, index) => rubs && solution.states[index]?.kind !== "solved");
  };
  let left: readonly number[] = wanted.map((_, c) => c);
  for (const more of MORE_FRICTION) left = solve(prepared, left, more);
  const unsettled = left.filter((c) => rests[c]?.solution.states[rests[c]?.index ?? 0]?.kind === "unsettled");
  if (unsettled.length > 0) solve(pinned(), unsettled, 1);
  return rests;
}
