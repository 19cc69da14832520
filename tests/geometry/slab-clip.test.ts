import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaOf, difference, intersection, union } from "../../src/geometry/clip.ts";
import { containsPoint, type Region, type Ring } from "../../src/geometry/polygon.ts";
import { type Keep, slabClip } from "../../src/geometry/slab-clip.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";

const square = (x: number, y: number, size: number): Ring => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];
const solid = (outer: Ring): Region => ({ outer, holes: [] });
const either: Keep = (a, b) => a || b;
const both: Keep = (a, b) => a && b;
const firstOnly: Keep = (a, b) => a && !b;

const coordinate = fc.integer({ min: 0, max: 60 }).map((step) => step / 10);
/** Triangles on a grid: many share corners, levels and edges. */
const triangles: fc.Arbitrary<readonly Region[]> = fc.array(
  fc
    .tuple(fc.tuple(coordinate, coordinate), fc.tuple(coordinate, coordinate), fc.tuple(coordinate, coordinate))
    .map(solid),
  { maxLength: 4 },
);

describe("clipping by slabs", () => {
  it("counts two unit squares a quarter over each other by hand: union 1.75, common 0.25, left over 0.75", () => {
    const [a, b] = [[solid(square(0, 0, 1))], [solid(square(0.5, 0.5, 1))]];
    expect(areaOf(slabClip(a, b, either))).toBeCloseTo(1.75, 12);
    expect(slabClip(a, b, both)).toEqual([solid(square(0.5, 0.5, 0.5))]);
    expect(areaOf(slabClip(a, b, firstOnly))).toBeCloseTo(0.75, 12);
    expect(slabClip([], [], either)).toEqual([]);
  });

  it("cuts where edges cross: triangles (0,0) (4,0) (2,4) and its mirror on y = 2 share 4 of their 8 each", () => {
    // The lower narrows from 4 to 0, the upper widens from 0 to 4 over the same height; at y both are 4 - y and y wide about
    // x = 2, so the common width is the lesser: the integral of min(4 - y, y) over 0 to 4 is 4.
    const lower = solid([
      [0, 0],
      [4, 0],
      [2, 4],
    ]);
    const upper = solid([
      [0, 4],
      [4, 4],
      [2, 0],
    ]);
    expect(areaOf(slabClip([lower], [upper], both))).toBeCloseTo(4, 12);
    expect(areaOf(slabClip([lower], [upper], either))).toBeCloseTo(12, 12);
  });

  it("leaves holes open and counts overlapping regions of one list once", () => {
    const frame: Region = { outer: square(0, 0, 3), holes: [square(1, 1, 1)] };
    expect(areaOf(slabClip([frame], [], either))).toBeCloseTo(8, 12);
    expect(areaOf(slabClip([frame, solid(square(0, 0, 2))], [], either))).toBeCloseTo(9, 12);
  });

  it("agrees with the sweep on area for any triangles", () => {
    fc.assert(
      fc.property(triangles, triangles, (a, b) => {
        // Both work on the same grid of 1e-9 m; some metres of edge make 1e-7 m².
        expect(Math.abs(areaOf(slabClip(a, b, either)) - areaOf(union([...a, ...b])))).toBeLessThan(1e-7);
        expect(Math.abs(areaOf(slabClip(a, b, both)) - areaOf(intersection(a, b)))).toBeLessThan(1e-7);
        expect(Math.abs(areaOf(slabClip(a, b, firstOnly)) - areaOf(difference(a, b)))).toBeLessThan(1e-7);
      }),
    );
  });

  it("covers a point exactly when the lists do", () => {
    // Points off the grid by thirds lie on no edge level and on few edges.
    const off: fc.Arbitrary<Vec2> = fc.tuple(coordinate, coordinate).map(([x, y]): Vec2 => [x + 1 / 30, y + 1 / 70]);
    fc.assert(
      fc.property(triangles, triangles, off, (a, b, point) => {
        const onEdge = [...a, ...b].some(
          (r) => containsPoint(r, point) && containsPoint({ outer: square(-9, -9, 30), holes: [r.outer] }, point),
        );
        fc.pre(!onEdge);
        const [inA, inB] = [a, b].map((list) => list.some((region) => containsPoint(region, point)));
        const found = slabClip(a, b, firstOnly).some((region) => containsPoint(region, point));
        expect(found).toBe(inA === true && inB === false);
      }),
      { numRuns: 300 },
    );
  });
});
