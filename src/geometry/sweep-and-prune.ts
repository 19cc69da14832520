import { type Bounds3, boundsOverlap } from "./bounds.ts";

/** Indices of two bounds that overlap, the lower first. */
export type IndexPair = readonly [number, number];

const AXES = [0, 1, 2] as const;
type Axis = (typeof AXES)[number];

/**
 * All pairs of bounds that overlap or come within `margin` [m] of each other, sorted by first and then second index, by sweeping
 * along one axis and keeping only what the sweep is still inside of (D. Baraff, 1992). The axis is the one along which the fewest
 * bounds lie over each other. Time grows with n·log n and the number of neighbours met on the way.
 */
export function overlappingPairs(bounds: readonly Bounds3[], margin = 0): readonly IndexPair[] {
  const axis = leastCrowded(bounds);
  const order = bounds
    .map((bound, index) => ({ bound, index, from: bound.min[axis] - margin, to: bound.max[axis] }))
    .sort((a, b) => a.from - b.from || a.index - b.index);
  const pairs: IndexPair[] = [];
  let active: (typeof order)[number][] = [];
  for (const next of order) {
    const still: typeof active = [];
    for (const earlier of active) {
      if (earlier.to < next.from) continue;
      still.push(earlier);
      if (!boundsOverlap(earlier.bound, next.bound, margin)) continue;
      pairs.push(earlier.index < next.index ? [earlier.index, next.index] : [next.index, earlier.index]);
    }
    still.push(next);
    active = still;
  }
  return pairs.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

/** The axis along which the sizes of all bounds together fill the least of the whole extent: there the sweep meets fewest. */
function leastCrowded(bounds: readonly Bounds3[]): Axis {
  let best: Axis = 0;
  let least = Infinity;
  for (const axis of AXES) {
    let [low, high, filled] = [Infinity, -Infinity, 0];
    for (const { min, max } of bounds) {
      low = Math.min(low, min[axis]);
      high = Math.max(high, max[axis]);
      filled += max[axis] - min[axis];
    }
    const crowding = high > low ? filled / (high - low) : Infinity;
    if (crowding < least) {
      least = crowding;
      best = axis;
    }
  }
  return best;
}
