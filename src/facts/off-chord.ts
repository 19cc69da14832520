import { type Piecewise, valueAt } from "../mechanics/piecewise.ts";
import { type Traced, traced } from "./along-bar.ts";

/**
 * How far a bar bends off the straight line through the outermost places that hold it; where one place holds it, how far it moves from
 * there. What the whole frame moves does not bend the bar, and would hide what does.
 */
export function offChord(moved: Piecewise, held: readonly number[]): readonly Traced[] {
  const points = traced(moved);
  if (held.length === 0) return points;
  const [first, last] = [Math.min(...held), Math.max(...held)];
  const [a, b] = [valueAt(moved, first, "after"), valueAt(moved, last)];
  const slope = last > first ? (b - a) / (last - first) : 0;
  return points.map(({ at, value }) => ({ at, value: value - a - slope * (at - first) }));
}
