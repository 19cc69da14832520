import { type Piecewise, valueAt } from "../mechanics/piecewise.ts";

/** A value along a bar: station from the cut from end, m, and what it is there, SI. A jump has two points of one station. */
export interface Traced {
  readonly at: number;
  readonly value: number;
}

/** A function along a bar as points to be joined: evenly spaced, and both sides of every break. */
export function traced(p: Piecewise, count = 40): readonly Traced[] {
  const breaks = [...p.breaks];
  const [low, high] = [breaks[0] ?? 0, breaks.at(-1) ?? 0];
  const points: Traced[] = [];
  for (const [i, from] of breaks.slice(0, -1).entries()) {
    const to = breaks[i + 1] ?? from;
    const steps = Math.max(1, Math.ceil((count * (to - from)) / Math.max(high - low, 1e-12)));
    for (let k = 0; k <= steps; k++) {
      const at = from + ((to - from) * k) / steps;
      points.push({ at, value: valueAt(p, at, k === 0 ? "after" : "before") });
    }
  }
  return points;
}

/** The point of a trace that lies furthest from nothing. */
export const greatest = (points: readonly Traced[]): Traced =>
  points.reduce((a, b) => (Math.abs(b.value) > Math.abs(a.value) ? b : a), { at: 0, value: 0 });
