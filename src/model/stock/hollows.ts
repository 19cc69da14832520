import { quarterArc } from "./arc.ts";
import { blockOf, type Cell, halfFloorOf, shoulderOf } from "./cell.ts";
import type { Pair } from "./pair.ts";

/**
 * Hollow in an outer corner, in the corner's own coordinates: [u, v] measured inwards from the two faces that meet there, m.
 * Its outer corner runs concentric with the rounded edge, so the wall keeps its thickness. Undefined when corners are solid.
 */
export function cornerHollow(cell: Cell): readonly Pair[] | undefined {
  const wall = cell.cornerWall;
  if (wall === undefined) return undefined;
  const far = blockOf(cell) - wall;
  const radius = Math.max(0, cell.cornerRadius - wall);
  const centre = wall + radius;
  const round = quarterArc(radius, cell.chordError).map(([a, b]): Pair => [centre - a, centre - b]);
  return [[far, wall], ...round, [wall, far], [far, far]];
}

/** Whether a hollow between two cells runs on to the skin of the outer face at its low and high end. */
interface HollowEnds {
  readonly low: number | undefined;
  readonly high: number | undefined;
}

/**
 * Hollow across the boundary between two cells, as [n, t]: n square to the boundary, t along it from the middle of the cells, m.
 * Inside each cell it has the shape of a slot cavity without lips, so inner webs are as thick as outer ones. `ends` gives the distance
 * from the cells' middle to the outer face where the boundary reaches one.
 */
export function cellHollow(cell: Cell, ends: HollowEnds, wall: number): readonly Pair[] {
  const shoulder = shoulderOf(cell);
  const side = cell.slot.cavity / 2;
  const floor = halfFloorOf(cell);
  const depth = cell.slot.depth;
  const high = ends.high === undefined ? side : ends.high - wall;
  const low = ends.low === undefined ? -side : -(ends.low - wall);
  const right: readonly Pair[] = [
    [shoulder, low],
    [shoulder, -side],
    [depth, -floor],
    [depth, floor],
    [shoulder, side],
    [shoulder, high],
  ];
  return [...right, ...right.map(([n, t]): Pair => [-n, t]).reverse()];
}

/** Hollow round a point where four cells meet: a square [y, z] about that point that leaves the inner webs, m. */
export function nodeHollow(cell: Cell): readonly Pair[] {
  const half = shoulderOf(cell);
  return [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ];
}
