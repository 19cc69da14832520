import type { Pair } from "./pair.ts";

interface Edge {
  readonly from: Pair;
  readonly to: Pair;
  readonly ring: number;
  readonly index: number;
  readonly count: number;
}

function edgesOf(ring: readonly Pair[], number: number): Edge[] {
  return ring.map((from, index) => ({
    from,
    to: ring[(index + 1) % ring.length] ?? from,
    ring: number,
    index,
    count: ring.length,
  }));
}

function neighbours(a: Edge, b: Edge): boolean {
  if (a.ring !== b.ring) return false;
  const step = Math.abs(a.index - b.index);
  return step <= 1 || step === a.count - 1;
}

function turn(a: Pair, b: Pair, c: Pair): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function touches(a: Edge, b: Edge): boolean {
  for (const axis of [0, 1] as const) {
    if (Math.max(a.from[axis], a.to[axis]) < Math.min(b.from[axis], b.to[axis])) return false;
    if (Math.max(b.from[axis], b.to[axis]) < Math.min(a.from[axis], a.to[axis])) return false;
  }
  const ofB = turn(a.from, a.to, b.from) * turn(a.from, a.to, b.to);
  const ofA = turn(b.from, b.to, a.from) * turn(b.from, b.to, a.to);
  return ofB <= 0 && ofA <= 0;
}

/** Where two edges of the rings that are no neighbours meet, as [ring, corner] of the first; undefined when none do. */
export function crossing(rings: readonly (readonly Pair[])[]): readonly [number, number] | undefined {
  const edges = rings.flatMap((ring, number) => edgesOf(ring, number)).sort((a, b) => low(a) - low(b));
  for (let i = 0; i < edges.length; i++) {
    const a = edges[i];
    if (a === undefined) continue;
    const reach = Math.max(a.from[0], a.to[0]);
    for (let j = i + 1; j < edges.length; j++) {
      const b = edges[j];
      if (b === undefined || low(b) > reach) break;
      if (!neighbours(a, b) && touches(a, b)) return [a.ring, a.index];
    }
  }
  return undefined;
}

function low(edge: Edge): number {
  return Math.min(edge.from[0], edge.to[0]);
}

/** Whether a point lies inside a ring, by counting crossings of a ray along +y. */
export function insideRing(ring: readonly Pair[], point: Pair): boolean {
  let inside = false;
  let previous = ring[ring.length - 1];
  for (const corner of ring) {
    if (previous !== undefined && corner[1] > point[1] !== previous[1] > point[1]) {
      const t = (point[1] - corner[1]) / (previous[1] - corner[1]);
      if (corner[0] + t * (previous[0] - corner[0]) > point[0]) inside = !inside;
    }
    previous = corner;
  }
  return inside;
}
