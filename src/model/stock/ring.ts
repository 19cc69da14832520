import type { Pair } from "./pair.ts";

/** Corners nearer to each other than this are one corner, m. */
const SAME_POINT = 1e-9;

/** Twice the enclosed area, positive when the ring runs from y towards z. */
function doubleArea(ring: readonly Pair[]): number {
  let sum = 0;
  let previous = ring[ring.length - 1];
  for (const point of ring) {
    if (previous !== undefined) sum += previous[0] * point[1] - point[0] * previous[1];
    previous = point;
  }
  return sum;
}

/** The ring without corners that coincide with the one before. */
export function withoutRepeats(ring: readonly Pair[]): Pair[] {
  const kept: Pair[] = [];
  for (const point of ring) {
    const last = kept[kept.length - 1];
    if (last === undefined || Math.hypot(point[0] - last[0], point[1] - last[1]) > SAME_POINT) kept.push(point);
  }
  const first = kept[0];
  const last = kept[kept.length - 1];
  if (first && last && kept.length > 1 && Math.hypot(first[0] - last[0], first[1] - last[1]) <= SAME_POINT) kept.pop();
  return kept;
}

/** The ring turned so that it runs from z towards y, as holes do. */
export function asHole(ring: readonly Pair[]): readonly Pair[] {
  return doubleArea(ring) > 0 ? [...ring].reverse() : ring;
}

/** The ring turned so that it runs from y towards z, as outlines do. */
export function asOutline(ring: readonly Pair[]): readonly Pair[] {
  return doubleArea(ring) < 0 ? [...ring].reverse() : ring;
}
