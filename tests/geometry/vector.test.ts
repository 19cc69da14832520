import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  add,
  add2,
  along,
  angleBetween,
  cross,
  cross2,
  distance,
  distance2,
  dot,
  dot2,
  length,
  length2,
  lerp,
  midpoint,
  normalise,
  perpendicularPair,
  rotateAbout,
  scale,
  subtract,
  subtract2,
  type Vec3,
} from "../../src/geometry/vector.ts";
import { directions, motions, move, points, turn } from "./arbitraries.ts";

/** Rounding of a few operations on numbers of some metres. */
const ROUNDING = 1e-12;

const expectNear = (actual: Vec3, expected: Vec3, tolerance = ROUNDING): void =>
  expect(distance(actual, expected)).toBeLessThanOrEqual(tolerance);

describe("vectors", () => {
  it("computes by hand: (1,2,3) and (4,5,6) give sum (5,7,9), dot 32, cross (-3,6,-3)", () => {
    expect(add([1, 2, 3], [4, 5, 6])).toEqual([5, 7, 9]);
    expect(subtract([4, 5, 6], [1, 2, 3])).toEqual([3, 3, 3]);
    expect(scale([1, -2, 3], 2)).toEqual([2, -4, 6]);
    expect(dot([1, 2, 3], [4, 5, 6])).toBe(32);
    expect(cross([1, 2, 3], [4, 5, 6])).toEqual([-3, 6, -3]);
    expect(along([1, 2, 3], [4, 5, 6], 2)).toEqual([9, 12, 15]);
  });

  it("computes in the plane by hand: (1,2) and (4,6) give sum (5,8), dot 16, cross -2, distance 5", () => {
    expect(add2([1, 2], [4, 6])).toEqual([5, 8]);
    expect(subtract2([1, 2], [4, 6])).toEqual([-3, -4]);
    expect(dot2([1, 2], [4, 6])).toBe(16);
    expect(cross2([1, 2], [4, 6])).toBe(-2);
    expect(distance2([1, 2], [4, 6])).toBe(5);
    expect(length2([3, -4])).toBe(5);
  });

  it("knows the box diagonal 2, 3, 6 is 7 long", () => {
    expect(length([2, 3, 6])).toBeCloseTo(7, 12);
    expect(distance([1, 1, 1], [3, 4, 7])).toBeCloseTo(7, 12);
  });

  it("finds middles and parts of a way, both ends exactly", () => {
    expect(midpoint([0, 2, 4], [2, 4, 8])).toEqual([1, 3, 6]);
    expect(lerp([0.1, 0.2, 0.3], [0.7, 0.8, 0.9], 1)).toEqual([0.7, 0.8, 0.9]);
    expect(lerp([0.1, 0.2, 0.3], [0.7, 0.8, 0.9], 0)).toEqual([0.1, 0.2, 0.3]);
    expectNear(lerp([0, 0, 0], [4, 8, 12], 0.25), [1, 2, 3]);
  });

  it("refuses a direction for a zero or endless vector", () => {
    expect(() => normalise([0, 0, 0])).toThrow(RangeError);
    expect(() => normalise([Number.NaN, 0, 0])).toThrow(RangeError);
    expect(() => rotateAbout([1, 0, 0], [0, 0, 0], 1)).toThrow(RangeError);
    expect(() => angleBetween([1, 0, 0], [0, 0, 0])).toThrow(RangeError);
  });

  it("turns right-handed: x about z by 90° is y, about y is -z; 120° about (1,1,1) carries x to y", () => {
    expectNear(rotateAbout([1, 0, 0], [0, 0, 5], Math.PI / 2), [0, 1, 0]);
    expectNear(rotateAbout([1, 0, 0], [0, 1, 0], Math.PI / 2), [0, 0, -1]);
    expectNear(rotateAbout([1, 0, 0], [1, 1, 1], (2 * Math.PI) / 3), [0, 1, 0]);
  });

  it("measures angles: 45°, 180°, the cube diagonal's acos(1/√3), and 1e-9 rad where an arc cosine would give 0", () => {
    expect(angleBetween([1, 0, 0], [3, 3, 0])).toBeCloseTo(Math.PI / 4, 14);
    expect(angleBetween([1, 0, 0], [-2, 0, 0])).toBeCloseTo(Math.PI, 14);
    expect(angleBetween([1, 1, 1], [1, 0, 0])).toBeCloseTo(Math.acos(1 / Math.sqrt(3)), 14);
    expect(angleBetween([1, 0, 0], [1, 1e-9, 0]) / 1e-9).toBeCloseTo(1, 6);
  });

  it("keeps lengths, angles and dot products under a rigid motion", () => {
    fc.assert(
      fc.property(points, points, directions, motions, (p, q, d, m) => {
        expect(distance(move(m, p), move(m, q))).toBeCloseTo(distance(p, q), 11);
        expect(dot(turn(m, p), turn(m, d))).toBeCloseTo(dot(p, d), 11);
        expectNear(cross(turn(m, p), turn(m, d)), turn(m, cross(p, d)), 1e-11);
      }),
    );
  });

  it("takes the helping direction from the axis leant on least: for z it is x, for x it is y, for (1,2,0.5) near z", () => {
    expectNear(perpendicularPair([0, 0, 1])[0], [1, 0, 0]);
    expectNear(perpendicularPair([1, 0, 0])[0], [0, 1, 0]);
    expect(perpendicularPair(normalise([1, 2, 0.5]))[0][2]).toBeGreaterThan(0.9);
    expect(perpendicularPair(normalise([1, 0.5, 2]))[0][1]).toBeGreaterThan(0.9);
    expect(perpendicularPair(normalise([0.5, 1, 2]))[0][0]).toBeGreaterThan(0.9);
  });

  it("completes any direction to a right-handed set", () => {
    fc.assert(
      fc.property(directions, (d) => {
        const n = normalise(d);
        const [u, v] = perpendicularPair(n);
        expectNear(cross(u, v), n);
        expect(Math.abs(dot(u, n))).toBeLessThan(ROUNDING);
        expect(length(u)).toBeCloseTo(1, 12);
      }),
    );
  });
});
