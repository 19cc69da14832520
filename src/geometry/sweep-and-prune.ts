import { type Bounds3, boundsOverlap } from "./bounds.ts";

/** Indices of two bounds that overlap, the lower first. */
export type IndexPair = readonly [number, number];

const AXES = [0, 1, 2] as const;
type Axis = (typeof AXES)[number];

/**
 * All pairs of bounds that overlap or come within `margin` [m] of each other, sorted by first and then second index, by sweeping
 * along one axis and keeping only what the sweep is still inside of (D. Baraff, 1992). The axis is the one along which the fewest
 * bounds lie over each other. Time grows with n·log n and the number of neighbours met on the way. No more than `most` and one
 * more are looked for.
 */
export function overlappingPairs(bounds: readonly Bounds3[], margin = 0, most = Infinity): readonly IndexPair[] {
  const axis = leastCrowded(bounds);
  // Flat arrays in sweep order: the inner loop runs over neighbours in memory.
  const order = bounds
    .map((bound, index) => ({ bound, index }))
    .sort((a, b) => a.bound.min[axis] - b.bound.min[axis] || a.index - b.index);
  const ends = Float64Array.from(order, ({ bound }) => bound.max[axis]);
  const active = new Int32Array(order.length);
  let count = 0;
  const pairs: IndexPair[] = [];
  for (const [position, { bound, index }] of order.entries()) {
    const from = bound.min[axis] - margin;
    let kept = 0;
    for (let i = 0; i < count; i += 1) {
      const earlier = active[i] ?? 0;
      if ((ends[earlier] ?? 0) < from) continue;
      active[kept] = earlier;
      kept += 1;
      const other = order[earlier];
      if (other === undefined || !boundsOverlap(other.bound, bound, margin)) continue;
      pairs.push(other.index < index ? [other.index, index] : [index, other.index]);
    }
    active[kept] = position;
    count = kept + 1;
    if (pairs.length > most) break;
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
