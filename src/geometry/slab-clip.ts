import type { Region, Ring } from "./polygon.ts";
import type { Vec2 } from "./vector.ts";

/** Whether a place belongs to the result, given whether the first and the second list cover it. */
export type Keep = (inFirst: boolean, inSecond: boolean) => boolean;

/** An edge that is not level, from its lower to its upper end [m], and the region (first list, then second) it bounds. */
interface Edge {
  readonly low: Vec2;
  readonly high: Vec2;
  readonly owner: number;
}

/** A slice under way: between two edges, from a level up to the top of the last slab that still had it. */
interface Slice {
  readonly left: Edge;
  readonly right: Edge;
  readonly bottom: number;
  readonly top: number;
}

/** Slabs lower than this [m] are rounding between levels that fall together: a thousandth of the clipping grid. */
const NO_HEIGHT = 1e-12;

/** The x of an edge at a level, exact at both ends. */
function xAt({ low, high }: Edge, y: number): number {
  const t = (y - low[1]) / (high[1] - low[1]);
  return low[0] * (1 - t) + high[0] * t;
}

function edgesOf(regions: readonly Region[]): readonly Edge[] {
  const edges: Edge[] = [];
  const collect = (ring: Ring, owner: number): void => {
    let from = ring[ring.length - 1];
    for (const to of ring) {
      if (from !== undefined && from[1] < to[1]) edges.push({ low: from, high: to, owner });
      if (from !== undefined && from[1] > to[1]) edges.push({ low: to, high: from, owner });
      from = to;
    }
  };
  for (const [owner, region] of regions.entries()) {
    collect(region.outer, owner);
    for (const hole of region.holes) collect(hole, owner);
  }
  return edges;
}

/** The level at which two edges cross between their ends, if they do. */
function crossingLevel(a: Edge, b: Edge): number | undefined {
  const bottom = Math.max(a.low[1], b.low[1]);
  const top = Math.min(a.high[1], b.high[1]);
  if (!(top > bottom)) return undefined;
  const below = xAt(a, bottom) - xAt(b, bottom);
  const above = xAt(a, top) - xAt(b, top);
  if (below * above >= 0) return undefined;
  return bottom + ((top - bottom) * below) / (below - above);
}

function levelsOf(edges: readonly Edge[]): readonly number[] {
  const levels: number[] = [];
  for (const [i, a] of edges.entries()) {
    levels.push(a.low[1], a.high[1]);
    for (const b of edges.slice(i + 1)) {
      const crossing = crossingLevel(a, b);
      if (crossing !== undefined) levels.push(crossing);
    }
  }
  return levels.sort((a, b) => a - b);
}

/** The stretches of one slab that belong to the result: between edges that do not cross inside it. */
function stretches(inSlab: readonly Edge[], firstCount: number, keep: Keep): readonly (readonly [Edge, Edge])[] {
  const found: (readonly [Edge, Edge])[] = [];
  const inside = new Set<number>();
  const covered = { first: 0, second: 0 };
  let left: Edge | undefined;
  for (const edge of inSlab) {
    const list = edge.owner < firstCount ? "first" : "second";
    if (inside.delete(edge.owner)) covered[list] -= 1;
    else {
      inside.add(edge.owner);
      covered[list] += 1;
    }
    const kept = keep(covered.first > 0, covered.second > 0);
    if (kept && left === undefined) left = edge;
    if (!kept && left !== undefined) {
      found.push([left, edge]);
      left = undefined;
    }
  }
  return found;
}

function ringOf({ left, right, bottom, top }: Slice): Ring {
  // Rounding at a crossing may put the right edge a hair left of the left one.
  const corners: readonly Vec2[] = [
    [xAt(left, bottom), bottom],
    [Math.max(xAt(left, bottom), xAt(right, bottom)), bottom],
    [Math.max(xAt(left, top), xAt(right, top)), top],
    [xAt(left, top), top],
  ];
  return corners;
}

/**
 * Clipping that cannot fail: the plane is cut into level slabs at every vertex and every crossing, and in a slab the edges stand in
 * one order from left to right (F. Preparata, M. Shamos, "Computational Geometry", 1985, 8.3). The result comes as four-sided slices
 * that do not overlap but share edges, so it is kept for what the faster sweep gives up on. Work grows with the square of the number
 * of edges. A region's own rings count by parity; regions of one list may overlap.
 */
export function slabClip(first: readonly Region[], second: readonly Region[], keep: Keep): readonly Region[] {
  const edges = edgesOf([...first, ...second]);
  const slices: Slice[] = [];
  let open: readonly Slice[] = [];
  let bottom = -Infinity;
  for (const top of levelsOf(edges)) {
    if (top - bottom < NO_HEIGHT) continue;
    const middle = (bottom + top) / 2;
    const inSlab = edges
      .filter(({ low, high }) => low[1] < middle && high[1] > middle)
      .map((edge) => ({ edge, x: xAt(edge, middle) }))
      .sort((a, b) => a.x - b.x)
      .map(({ edge }) => edge);
    const next: Slice[] = [];
    for (const [left, right] of stretches(inSlab, first.length, keep)) {
      const grown = open.find((slice) => slice.left === left && slice.right === right);
      next.push({ left, right, bottom: grown?.bottom ?? bottom, top });
    }
    for (const slice of open) {
      if (!next.some(({ left, right }) => left === slice.left && right === slice.right)) slices.push(slice);
    }
    open = next;
    bottom = top;
  }
  return [...slices, ...open].map((slice): Region => ({ outer: ringOf(slice), holes: [] }));
}
