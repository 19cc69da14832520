import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaOf, intersection } from "../../src/geometry/clip.ts";
import { clipConvex, convexDepth, convexHull } from "../../src/geometry/convex.ts";
import { type Ring, signedArea } from "../../src/geometry/polygon.ts";
import { rotateRegion } from "../../src/geometry/region-transform.ts";
import { cross2, subtract2, type Vec2 } from "../../src/geometry/vector.ts";

const square = (x: number, y: number, size: number): Ring => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];
const turned = (ring: Ring, angle: number): Ring => rotateRegion({ outer: ring, holes: [] }, angle).outer;
const coordinate = fc.integer({ min: -1000, max: 1000 }).map((millimetre) => millimetre / 1000);
const clouds: fc.Arbitrary<readonly Vec2[]> = fc.array(fc.tuple(coordinate, coordinate), {
  minLength: 3,
  maxLength: 20,
});

describe("convex hull", () => {
  it("keeps the four corners of a 3 x 3 grid of points, whatever their order, counter-clockwise from the lower left", () => {
    const grid: Vec2[] = [];
    for (const x of [1, 0, 2]) for (const y of [2, 1, 0]) grid.push([x, y]);
    const hull = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ];
    expect(convexHull(grid)).toEqual(hull);
    expect(convexHull([...grid].reverse())).toEqual(hull);
  });

  it("leaves every point on the left of every edge", () => {
    fc.assert(
      fc.property(clouds, (cloud) => {
        const hull = convexHull(cloud);
        for (const [i, from] of hull.entries()) {
          const to = hull[(i + 1) % hull.length] ?? from;
          for (const p of cloud) expect(cross2(subtract2(to, from), subtract2(p, from))).toBeGreaterThan(-1e-12);
        }
      }),
    );
  });

  it("passes on what is too little for a hull", () => {
    expect(convexHull([])).toEqual([]);
    expect(convexHull([[1, 2]])).toEqual([[1, 2]]);
  });
});

describe("convex clipping and depth", () => {
  it("cuts by hand: a 2 m square turned 45° about the middle of another leaves an octagon of 8(√2 − 1) m²", () => {
    const octagon = clipConvex(square(-1, -1, 2), turned(square(-1, -1, 2), Math.PI / 4));
    expect(octagon.length).toBe(8);
    expect(signedArea(octagon)).toBeCloseTo(8 * (Math.SQRT2 - 1), 12);
  });

  it("leaves nothing of squares apart, and no area of squares that touch", () => {
    expect(clipConvex(square(0, 0, 1), square(2, 0, 1))).toEqual([]);
    expect(signedArea(clipConvex(square(0, 0, 1), square(1, 0, 1)))).toBe(0);
  });

  it("measures depth by hand: unit squares at 0.75 overlap 0.25, at 1 touch, at 1.5 leave 0.5; a point of 45° reaches √2/2", () => {
    expect(convexDepth(square(0, 0, 1), square(0.75, 0.5, 1))).toBeCloseTo(0.25, 12);
    expect(convexDepth(square(0, 0, 1), square(0, 1, 1))).toBe(0);
    expect(convexDepth(square(0, 0, 1), square(-1.5, 0, 1))).toBeCloseTo(-0.5, 12);
    const diamond = turned(square(-0.5, -0.5, 1), Math.PI / 4).map(([x, y]): Vec2 => [x + 1.5, y + 0.5]);
    expect(convexDepth(square(0, 0, 1), diamond)).toBeCloseTo(Math.SQRT1_2 - 0.5, 12);
  });

  it("agrees with general clipping on area, and on whether there is any", () => {
    fc.assert(
      fc.property(clouds, clouds, (p, q) => {
        const [a, b] = [convexHull(p), convexHull(q)];
        fc.pre(signedArea(a) > 1e-3 && signedArea(b) > 1e-3);
        const area = signedArea(clipConvex(a, b));
        // Snapping to 1e-9 m along a few metres of edge.
        expect(
          Math.abs(area - areaOf(intersection([{ outer: a, holes: [] }], [{ outer: b, holes: [] }]))),
        ).toBeLessThan(1e-8);
        const depth = convexDepth(a, b);
        if (area > 1e-9) expect(depth).toBeGreaterThan(0);
        if (depth < -1e-12) expect(area).toBe(0);
      }),
    );
  });
});
