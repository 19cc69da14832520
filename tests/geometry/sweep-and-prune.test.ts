import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Bounds3, boundsOverlap } from "../../src/geometry/bounds.ts";
import { type IndexPair, overlappingPairs } from "../../src/geometry/sweep-and-prune.ts";

const cube = (x: number, y: number, z: number, size = 1): Bounds3 => ({
  min: [x, y, z],
  max: [x + size, y + size, z + size],
});

function everyPair(bounds: readonly Bounds3[], margin: number): readonly IndexPair[] {
  const pairs: IndexPair[] = [];
  for (const [i, a] of bounds.entries()) {
    for (const [j, b] of bounds.entries()) if (i < j && boundsOverlap(a, b, margin)) pairs.push([i, j]);
  }
  return pairs;
}

/** How often a sweep reads a far corner: a measure of its work that does not depend on the machine. */
function readsOf(bounds: readonly Bounds3[]): number {
  let reads = 0;
  overlappingPairs(
    bounds.map(
      ({ min, max }): Bounds3 => ({
        min,
        get max() {
          reads += 1;
          return max;
        },
      }),
    ),
  );
  return reads;
}

const cubes = fc.array(
  fc
    .tuple(...[0, 1, 2].map(() => fc.integer({ min: 0, max: 6 })), fc.integer({ min: 0, max: 3 }))
    .map(([x = 0, y = 0, z = 0, size = 0]) => cube(x, y, z, size)),
  { maxLength: 40 },
);

describe("sweep and prune", () => {
  it("finds by hand: of cubes at 0, 0.5 and 3 only the first two overlap; those at 0 and 1 touch", () => {
    expect(overlappingPairs([cube(3, 0, 0), cube(0.5, 0, 0), cube(0, 0, 0)])).toEqual([[1, 2]]);
    expect(overlappingPairs([cube(1, 0, 0), cube(0, 0, 0)])).toEqual([[0, 1]]);
    expect(overlappingPairs([])).toEqual([]);
    expect(overlappingPairs([cube(0, 0, 0)])).toEqual([]);
  });

  it("reaches over a gap of up to the margin", () => {
    const two = [cube(0, 0, 0), cube(1.25, 0, 0)];
    expect(overlappingPairs(two, 0.2)).toEqual([]);
    expect(overlappingPairs(two, 0.25)).toEqual([[0, 1]]);
  });

  it("agrees with comparing every pair, in the same order", () => {
    fc.assert(
      fc.property(cubes, fc.constantFrom(0, 0.5, 1), (bounds, margin) => {
        expect(overlappingPairs(bounds, margin)).toEqual(everyPair(bounds, margin));
      }),
    );
  });

  it("sweeps along the row, whichever way it lies: under ten reads for each of 2,000 bars", () => {
    for (const way of [0, 1, 2]) {
      const row = Array.from({ length: 2000 }, (_, i) => {
        const [x = 0, y = 0, z = 0] = [0, 1, 2].map((axis) => (axis === way ? -3000 + i * 2 : 0));
        return cube(x, y, z, 1);
      });
      expect(readsOf(row)).toBeLessThan(10 * row.length);
    }
  });

  it("handles 10,000 bars in a grid of bays: 22 x 22 x 22 less a few, each touching its neighbours only", () => {
    const side = 22;
    const bounds: Bounds3[] = [];
    for (let i = 0; i < 10_000; i += 1) {
      bounds.push(cube(i % side, Math.floor(i / side) % side, Math.floor(i / side / side), 0.9));
    }
    // Apart by 0.1 along each axis: no pairs without margin; with 0.1 more, everyone reaches the next cell round about.
    expect(overlappingPairs(bounds)).toEqual([]);
    // A sweep meets half a layer of 484 on average, up to six reads each; every pair would be twenty times that.
    expect(readsOf(bounds)).toBeLessThan(((10_000 * side * side) / 2) * 6);
    const [inside] = [5 + side * 5 + side * side * 5];
    const neighbours = overlappingPairs(bounds, 0.2).filter(([a, b]) => a === inside || b === inside);
    expect(neighbours.length).toBe(26);
  });
});
