import { extrema, valueAt } from "../piecewise.ts";
import { memberForces } from "../results.ts";
import type { Solution } from "../statics/solve.ts";

/** The axial force along a member. */
export interface Axial {
  /** How hard it is pressed at a station, N; at a jump on the asked side. */
  press(x: number, side?: "before" | "after"): number;
  /** Largest compression, N; zero or less when there is none. */
  readonly push: number;
  /** Largest force either way, N: a pulled member that is cut too coarsely holds the frame too stiffly. */
  readonly size: number;
}

/** Axial forces of all members in one solved combination. */
export function axialOf(solution: Solution, combination: number): readonly Axial[] {
  return solution.frame.model.members.map((_, m) => {
    const { N } = memberForces(solution, combination, m);
    const { min, max } = extrema(N);
    return {
      press: (x, side) => -valueAt(N, x, side),
      push: -min.value,
      size: Math.max(-min.value, max.value),
    };
  });
}

/** Members that are everywhere pressed as hard as in the worst of several combinations. */
export function hardestPressed(all: readonly (readonly Axial[])[]): readonly Axial[] {
  const [first, ...others] = all;
  if (!first) return [];
  if (others.length === 0) return first;
  return first.map((_, m) => {
    const own = all.flatMap((one) => one[m] ?? []);
    return {
      press: (x, side) => own.reduce((most, axial) => Math.max(most, axial.press(x, side)), -Infinity),
      push: own.reduce((most, { push }) => Math.max(most, push), -Infinity),
      size: own.reduce((most, { size }) => Math.max(most, size), 0),
    };
  });
}
