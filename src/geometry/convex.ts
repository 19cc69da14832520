import type { Ring } from "./polygon.ts";
import { cross2, dot2, length2, subtract2, type Vec2 } from "./vector.ts";

/** The convex hull of points [m], counter-clockwise, points on its edges left out (A. M. Andrew's monotone chain, 1979). */
export function convexHull(points: readonly Vec2[]): Ring {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (ordered: readonly Vec2[]): Vec2[] => {
    const kept: Vec2[] = [];
    for (const p of ordered) {
      for (;;) {
        const [b, c] = [kept[kept.length - 2], kept[kept.length - 1]];
        if (b === undefined || c === undefined || cross2(subtract2(c, b), subtract2(p, c)) > 0) break;
        kept.pop();
      }
      kept.push(p);
    }
    kept.pop();
    return kept;
  };
  if (sorted.length < 3) return sorted;
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/**
 * What two convex counter-clockwise rings share [m], by cutting the first along every edge of the second (I. Sutherland,
 * G. Hodgman, 1974). Empty where they share nothing; where they only touch, the ring has no area.
 */
export function clipConvex(subject: Ring, clip: Ring): Ring {
  let kept: readonly Vec2[] = subject;
  let from = clip[clip.length - 1];
  for (const to of clip) {
    if (from === undefined) break;
    kept = keepLeft(kept, from, to);
    from = to;
  }
  return kept;
}

function keepLeft(ring: Ring, from: Vec2, to: Vec2): Ring {
  const edge = subtract2(to, from);
  const size = length2(edge);
  if (size === 0) return ring;
  const kept: Vec2[] = [];
  let previous = ring[ring.length - 1];
  for (const current of ring) {
    if (previous === undefined) break;
    const d0 = cross2(edge, subtract2(previous, from)) / size;
    const d1 = cross2(edge, subtract2(current, from)) / size;
    if ((d0 < 0 && d1 > 0) || (d0 > 0 && d1 < 0)) {
      const t = d0 / (d0 - d1);
      kept.push([previous[0] + t * (current[0] - previous[0]), previous[1] + t * (current[1] - previous[1])]);
    }
    if (d1 >= 0) kept.push(current);
    previous = current;
  }
  return kept;
}

/** Overlap of two convex rings [m] over their edge normals: > 0 overlapping by that depth, 0 touching, < 0 apart by at least that. */
export function convexDepth(a: Ring, b: Ring): number {
  return Math.min(depthOverEdges(a, b), depthOverEdges(b, a));
}

function depthOverEdges(a: Ring, b: Ring): number {
  let least = Infinity;
  let from = a[a.length - 1];
  for (const to of a) {
    if (from === undefined) break;
    const edge = subtract2(to, from);
    const size = length2(edge);
    if (size > 0) {
      const normal: Vec2 = [edge[1] / size, -edge[0] / size];
      const [a0, a1] = stretch(a, normal);
      const [b0, b1] = stretch(b, normal);
      least = Math.min(least, a1 - b0, b1 - a0);
    }
    from = to;
  }
  return least;
}

function stretch(ring: Ring, axis: Vec2): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const point of ring) {
    const at = dot2(point, axis);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low, high];
}
