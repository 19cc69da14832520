import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  area,
  bounds,
  centroid,
  containsPoint,
  distanceToEdge,
  type Region,
  type Ring,
  secondMoments,
  signedArea,
} from "../../src/geometry/polygon.ts";
import {
  mirrorRegion,
  rotateRegion,
  snapRegion,
  snapRing,
  translateRegion,
} from "../../src/geometry/region-transform.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { between } from "./arbitraries.ts";

const rectangle = (width: number, height: number, at: Vec2 = [0, 0]): Ring => [
  [at[0], at[1]],
  [at[0] + width, at[1]],
  [at[0] + width, at[1] + height],
  [at[0], at[1] + height],
];
const solid = (outer: Ring): Region => ({ outer, holes: [] });
/** 40 x 40 mm outside, 36 x 36 mm inside. */
const tube: Region = { outer: rectangle(0.04, 0.04), holes: [rectangle(0.036, 0.036, [0.002, 0.002])] };
/** L of two 1 x 3 and 2 x 1 rectangles, in metres. */
const ell: Region = solid([
  [0, 0],
  [3, 0],
  [3, 1],
  [1, 1],
  [1, 3],
  [0, 3],
]);
/** Relative error allowed where only rounding may differ. */
const expectClose = (actual: number, expected: number, relative = 1e-12, floor = 0): void =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + floor);

const regions: fc.Arbitrary<Region> = fc.array(between(0.2, 1), { minLength: 4, maxLength: 12 }).map((radii) => {
  const star = (k: number): Ring =>
    radii.map((r, i): Vec2 => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [k * r * Math.cos(angle), k * r * Math.sin(angle)];
    });
  return { outer: star(1), holes: [star(0.3)] };
});

describe("polygon properties", () => {
  it("gives a rectangle b x h its handbook values bh, bh³/12, hb³/12", () => {
    const region = solid(rectangle(0.03, 0.05, [1, 2]));
    expectClose(area(region), 0.0015);
    expectClose(centroid(region)[0], 1.015);
    expectClose(centroid(region)[1], 2.025);
    const { ix, iy, ixy } = secondMoments(region);
    expectClose(ix, (0.03 * 0.05 ** 3) / 12);
    expectClose(iy, (0.05 * 0.03 ** 3) / 12);
    expect(Math.abs(ixy)).toBeLessThan(1e-20);
  });

  it("gives a 3 x 4 right triangle area 6, centroid at the third points, bh³/36 and the product -b²h²/72 (Roark, table A.1)", () => {
    const region = solid([
      [0, 0],
      [3, 0],
      [0, 4],
    ]);
    expectClose(area(region), 6);
    expectClose(centroid(region)[0], 1);
    expectClose(centroid(region)[1], 4 / 3);
    const { ix, iy, ixy } = secondMoments(region);
    expectClose(ix, (3 * 4 ** 3) / 36);
    expectClose(iy, (4 * 3 ** 3) / 36);
    expectClose(ixy, -(3 ** 2 * 4 ** 2) / 72);
  });

  it("takes holes away: a tube 40 x 40 x 2 mm has 304 mm² and (40⁴ - 36⁴)/12 = 73365.33 mm⁴", () => {
    expectClose(area(tube), 304e-6);
    expectClose(secondMoments(tube).ix, ((40 ** 4 - 36 ** 4) / 12) * 1e-12);
    expectClose(secondMoments(tube).iy, ((40 ** 4 - 36 ** 4) / 12) * 1e-12);
  });

  it("finds the L by hand: area 5, centroid (3·0.5 + 2·2)/5 = 1.1, product of inertia 3·(-0.6)(0.4) + 2·(0.9)(-0.6) = -1.8", () => {
    // Parts: 1 x 3 with middle (0.5, 1.5), 2 x 1 with middle (2, 0.5); middle of all ((1.5+4)/5, (4.5+1)/5) = (1.1, 1.1).
    // ix = 1·27/12 + 3·0.4² + 2·1/12 + 2·0.6² = 2.25 + 0.48 + 0.1667 + 0.72.
    expectClose(area(ell), 5);
    expectClose(centroid(ell)[0], 1.1);
    expectClose(centroid(ell)[1], 1.1);
    const { ix, iy, ixy } = secondMoments(ell);
    expectClose(ix, 2.25 + 0.48 + 1 / 6 + 0.72);
    expectClose(iy, 2.25 + 0.48 + 1 / 6 + 0.72);
    expectClose(ixy, -1.8);
  });

  it("signs a ring's area by the way it runs, and no other property", () => {
    expect(signedArea(rectangle(2, 3))).toBe(6);
    expect(signedArea([...rectangle(2, 3)].reverse())).toBe(-6);
    const reversed: Region = {
      outer: [...tube.outer].reverse(),
      holes: tube.holes.map((hole) => [...hole].reverse()),
    };
    expectClose(secondMoments(reversed).ix, secondMoments(tube).ix);
    expectClose(area(reversed), area(tube));
  });

  it("knows the inside, the hole and the edges of both", () => {
    expect(containsPoint(tube, [0.001, 0.02])).toBe(true);
    expect(containsPoint(tube, [0.02, 0.02])).toBe(false);
    expect(containsPoint(tube, [0.05, 0.02])).toBe(false);
    expect(containsPoint(tube, [0, 0.02])).toBe(true);
    expect(containsPoint(tube, [0.002, 0.02])).toBe(true);
    expect(containsPoint(tube, [0.04, 0.04])).toBe(true);
    expect(containsPoint(ell, [2, 2])).toBe(false);
    // Level with corners of the L: the ray runs through vertices.
    expect(containsPoint(ell, [0.5, 1])).toBe(true);
    expect(containsPoint(ell, [-0.5, 1])).toBe(false);
  });

  it("knows the inside of slanted edges: of a triangle (1,1) (5,2) (2,6) by its three edge products", () => {
    const [a, b, c]: readonly [Vec2, Vec2, Vec2] = [
      [1, 1],
      [5, 2],
      [2, 6],
    ];
    const left = (a: Vec2, b: Vec2, p: Vec2): number => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
    const coordinate = between(0, 7);
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const products = [left(a, b, [x, y]), left(b, c, [x, y]), left(c, a, [x, y])];
        fc.pre(products.every((value) => Math.abs(value) > 1e-6));
        expect(containsPoint(solid([a, b, c]), [x, y])).toBe(products.every((value) => value > 0));
      }),
      { numRuns: 1000 },
    );
  });

  it("measures to an edge by hand, to its ends, its line or its one point", () => {
    // Along (4,3)/5 the foot is at ((3·4 + 5·3)/5) = 27/5 of 5, past the end: nearest is (5,4), √5 away.
    expect(distanceToEdge([4, 6], [1, 1], [5, 4])).toBeCloseTo(Math.sqrt(5), 12);
    // (2,5): foot at (4·1 + 3·4)/5 = 16/5, off by |4·4 - 3·1|/5 = 13/5.
    expect(distanceToEdge([2, 5], [1, 1], [5, 4])).toBeCloseTo(13 / 5, 12);
    expect(distanceToEdge([-2, -3], [1, 1], [5, 4])).toBeCloseTo(5, 12);
    expect(distanceToEdge([4, 5], [1, 1], [1, 1])).toBeCloseTo(5, 12);
  });

  it("bounds a region and refuses an empty one", () => {
    expect(bounds(ell)).toEqual({ min: [0, 0], max: [3, 3] });
    expect(() => bounds(solid([]))).toThrow(RangeError);
    expect(() => centroid(solid([]))).toThrow(RangeError);
    expect(() =>
      centroid(
        solid([
          [0, 0],
          [1, 1],
          [2, 2],
        ]),
      ),
    ).toThrow(RangeError);
  });

  it("keeps area, trace and determinant of the second moments under shift, turn and mirror", () => {
    fc.assert(
      fc.property(regions, between(-3, 3), (region, angle) => {
        const start = secondMoments(region);
        const moved = mirrorRegion(rotateRegion(translateRegion(region, [2, -1]), angle, [0.5, 0.25]), angle / 3);
        const end = secondMoments(moved);
        expectClose(area(moved), area(region), 1e-10);
        expectClose(end.ix + end.iy, start.ix + start.iy, 1e-10);
        expectClose(end.ix * end.iy - end.ixy ** 2, start.ix * start.iy - start.ixy ** 2, 1e-9);
        expect(Math.sign(signedArea(moved.outer))).toBe(Math.sign(signedArea(region.outer)));
      }),
    );
  });

  it("obeys the parallel-axis theorem: the whole about its centroid from two halves about theirs", () => {
    const [left, right] = [solid(rectangle(0.01, 0.04)), solid(rectangle(0.03, 0.04, [0.01, 0]))];
    const whole = solid(rectangle(0.04, 0.04));
    const x = centroid(whole)[0];
    const sum = [left, right].reduce((s, r) => s + secondMoments(r).iy + area(r) * (centroid(r)[0] - x) ** 2, 0);
    expectClose(sum, secondMoments(whole).iy);
  });
});

describe("moving and snapping polygons", () => {
  it("moves by a vector: (1, 2) by (3, -5) is (4, -3), holes as well", () => {
    expect(translateRegion({ outer: [[1, 2]], holes: [[[0, 0]]] }, [3, -5])).toEqual({
      outer: [[4, -3]],
      holes: [[[3, -5]]],
    });
  });

  it("turns (1, 0) by 90° about (1, 1) to (2, 1) and mirrors (1, 0) in the line at 45° to (0, 1)", () => {
    const turned = rotateRegion(solid([[1, 0]]), Math.PI / 2, [1, 1]).outer[0] ?? [Number.NaN, 0];
    expect(turned[0]).toBeCloseTo(2, 14);
    expect(turned[1]).toBeCloseTo(1, 14);
    const mirrored = mirrorRegion(solid([[1, 0]]), Math.PI / 4).outer[0] ?? [Number.NaN, 0];
    expect(mirrored[0]).toBeCloseTo(0, 14);
    expect(mirrored[1]).toBeCloseTo(1, 14);
  });

  it("snaps to 1e-6 mm, drops points that fall together, and keeps written decimals exactly", () => {
    const noisy: Ring = [
      [0.1 + 3e-10, 0],
      [0.1, 2e-10],
      [0.3, 0],
      [0.3, 0.4],
      [0.1, -4e-10],
    ];
    expect(snapRing(noisy)).toEqual([
      [0.1, 0],
      [0.3, 0],
      [0.3, 0.4],
    ]);
  });

  it("refuses a point that is no number", () => {
    expect(() => snapRing([...rectangle(1, 1), [Number.NaN, 0]])).toThrow(RangeError);
    expect(() => snapRing([...rectangle(1, 1), [0, Number.POSITIVE_INFINITY]])).toThrow(RangeError);
  });

  it("drops what is thinner than the grid", () => {
    expect(snapRegion(solid(rectangle(1e-10, 1e-10)))).toBeUndefined();
    expect(snapRegion({ outer: rectangle(1, 1), holes: [rectangle(1e-10, 1e-10, [0.5, 0.5])] })?.holes).toEqual([]);
  });
});
