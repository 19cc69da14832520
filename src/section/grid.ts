import { bounds, type Region, type Ring } from "../geometry/polygon.ts";

/**
 * Largest grid coordinate of a section. With whole numbers up to 2^25 every difference and product in an orientation test
 * stays below 2^53, so the test is exact in doubles and no robust predicates are needed (the mesher's box reaches 1.5 times further).
 */
export const GRID_REACH = 2 ** 24;

/** Half sizes [m] beyond which the sixth power of a length would lose digits or overflow; no bar comes near. */
const SMALLEST = 1e-9;
const LARGEST = 1e6;

/** Outlines of more points, holes included, are refused: arcs drawn with 64 points a turn need a tenth of them. */
const MOST_POINTS = 5000;

/** One ring on the grid; whole-numbered coordinates, no point repeated in a row. */
export interface GridRing {
  /** What the ring is called in messages: "the outer ring", "hole 2". */
  readonly name: string;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** A region drawn on a grid fine enough to change no property by more than its rounding, about 6e-8 of the section's size. */
export interface Grid {
  /** The outer ring first, then the holes. */
  readonly rings: readonly GridRing[];
  /** Length of one grid step [m]. */
  readonly step: number;
  /** Polygon coordinates of the grid's origin [m]. */
  readonly origin: { readonly y: number; readonly z: number };
}

/** Rounds a region to the grid. Throws RangeError for too few points, no finite number, no area, no size of a bar, a hole that reaches outside. */
export function toGrid(region: Region): Grid {
  const rings = [region.outer, ...region.holes];
  rings.forEach((ring, index) => {
    checkPoints(ring, nameOf(index));
  });
  const points = rings.reduce((count, ring) => count + ring.length, 0);
  if (points > MOST_POINTS)
    throw new RangeError(`section: ${points} points are more than the ${MOST_POINTS} a section may have`);
  const { min, max } = bounds(region);
  const reach = Math.max(max[0] - min[0], max[1] - min[1]) / 2;
  if (reach === 0) throw new RangeError("section has no area: all points of the outer ring coincide");
  if (!(reach >= SMALLEST && reach <= LARGEST)) {
    throw new RangeError(`section: ${2 * reach} m across is no size of a bar; lengths are metres`);
  }
  rings.forEach((ring, index) => {
    if (ring.some(([y, z]) => y < min[0] || y > max[0] || z < min[1] || z > max[1])) {
      throw new RangeError(`section: ${nameOf(index)} reaches outside the outer ring`);
    }
  });
  const origin = { y: (min[0] + max[0]) / 2, z: (min[1] + max[1]) / 2 };
  const onGrid = (value: number) => Math.round((value / reach) * GRID_REACH);
  return {
    rings: rings.map((ring, index) => {
      const points = withoutRepeats(ring.map(([y, z]) => [onGrid(y - origin.y), onGrid(z - origin.z)] as const));
      if (points.length < 3) throw new RangeError(`section has no area: ${nameOf(index)} shrinks to a line or a point`);
      return {
        name: nameOf(index),
        y: Float64Array.from(points, ([y]) => y),
        z: Float64Array.from(points, ([, z]) => z),
      };
    }),
    step: reach / GRID_REACH,
    origin,
  };
}

const nameOf = (index: number): string => (index === 0 ? "the outer ring" : `hole ${index}`);

function checkPoints(ring: Ring, name: string): void {
  if (ring.length < 3) throw new RangeError(`section: ${name} has ${ring.length} points, a polygon needs three`);
  ring.forEach(([y, z], index) => {
    if (!Number.isFinite(y) || !Number.isFinite(z)) {
      throw new RangeError(`section: point ${index + 1} of ${name} is (${y}, ${z}), not a pair of finite numbers`);
    }
  });
}

function withoutRepeats(ring: Ring): Ring {
  return ring.filter(([y, z], index) => {
    const before = ring[index === 0 ? ring.length - 1 : index - 1];
    return !before || before[0] !== y || before[1] !== z;
  });
}

/** Signed area of a ring in square grid steps, positive when it turns anticlockwise. */
export function ringArea({ y, z }: GridRing): number {
  let twice = 0;
  for (let i = 0, j = y.length - 1; i < y.length; j = i++)
    twice += (y[j] as number) * (z[i] as number) - (y[i] as number) * (z[j] as number);
  return twice / 2;
}
