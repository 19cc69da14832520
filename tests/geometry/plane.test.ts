import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { intersectLine, mitrePlane, projectOnto, signedDistance } from "../../src/geometry/plane.ts";
import { along, angleBetween, distance, dot, normalise, scale, type Vec3 } from "../../src/geometry/vector.ts";
import { directions, points } from "./arbitraries.ts";

const floor = { point: [0, 0, 1] as Vec3, normal: [0, 0, 1] as Vec3 };

describe("planes", () => {
  it("measures on both sides: 3 is 2 above the plane z = 1, 0 is 1 below", () => {
    expect(signedDistance(floor, [5, -7, 3])).toBe(2);
    expect(signedDistance(floor, [5, -7, 0])).toBe(-1);
    expect(projectOnto(floor, [5, -7, 3])).toEqual([5, -7, 1]);
  });

  it("meets a line: from z = 0 by steps of (1, 0, 0.5) the plane z = 1 is 2 steps away", () => {
    expect(intersectLine(floor, [0, 0, 0], [1, 0, 0.5])).toBeCloseTo(2, 12);
    expect(intersectLine(floor, [0, 0, 0], [1, 0, -0.5])).toBeCloseTo(-2, 12);
  });

  it("says a parallel line does not meet it, and refuses a line without direction", () => {
    expect(intersectLine(floor, [0, 0, 0], [1, 2, 0])).toBeUndefined();
    expect(intersectLine(floor, [0, 0, 1], [1, 2, 0])).toBeUndefined();
    expect(() => intersectLine(floor, [0, 0, 0], [0, 0, 0])).toThrow(RangeError);
  });

  it("mitres a square corner at 45°: bars along +x and +y part in the plane x = y", () => {
    const plane = mitrePlane([0, 0, 0], [2, 0, 0], [0, 1, 0]);
    expect(distance(plane.normal, [-Math.SQRT1_2, Math.SQRT1_2, 0])).toBeLessThan(1e-15);
    // The first bar's material is behind its cut.
    expect(signedDistance(plane, [1, 0, 0])).toBeLessThan(0);
    expect(signedDistance(plane, [0, 1, 0])).toBeGreaterThan(0);
  });

  it("cuts bars in one line square, and refuses two bars on top of each other", () => {
    expect(mitrePlane([0, 0, 0], [1, 0, 0], [-3, 0, 0]).normal).toEqual([-1, 0, 0]);
    expect(() => mitrePlane([0, 0, 0], [1, 0, 0], [2, 0, 0])).toThrow(RangeError);
  });

  it("makes each bar the mirror image of the other", () => {
    fc.assert(
      fc.property(points, directions, directions, (corner, first, second) => {
        fc.pre(angleBetween(first, second) > 0.01);
        const { normal } = mitrePlane(corner, first, second);
        const [a, b] = [normalise(first), normalise(second)];
        expect(distance(along(a, normal, -2 * dot(a, normal)), b)).toBeLessThan(1e-12);
        expect(distance(mitrePlane(corner, second, first).normal, scale(normal, -1))).toBeLessThan(1e-12);
      }),
    );
  });
});
