import { describe, expect, it } from "vitest";
import { fallUntilMet } from "../../src/geometry/fall.ts";
import type { Prism } from "../../src/geometry/prism.ts";
import { prismPenetration } from "../../src/geometry/prism-penetration.ts";
import { turned } from "../../src/geometry/turning-body.ts";
import { add, type Vec3 } from "../../src/geometry/vector.ts";
import { boxBetween } from "./box-between.ts";

/** The same body elsewhere; its faces keep their normals, which is all that is asked of them here. */
const moved = (body: Prism, by: Vec3): Prism => ({ ...body, vertices: body.vertices.map((v) => add(v, by)) });

const DOWN: Vec3 = [0, 0, -1];
const sill = boxBetween([0, 0, 0], [1, 0.04, 0.1]);
const falls = (body: Prism, onto: Prism = sill) => fallUntilMet(body, onto, DOWN, 0.05, 1e-4);

describe("fallUntilMet", () => {
  it("is the gap between two boxes one above the other", () => {
    expect(falls(boxBetween([0.2, 0, 0.104], [0.6, 0.04, 1]))).toBeCloseTo(0.004, 12);
    expect(falls(boxBetween([0.2, 0, 0.1], [0.6, 0.04, 1]))).toBeCloseTo(0, 12);
  });

  it("meets nothing beside it, farther below than asked, or above", () => {
    expect(falls(boxBetween([0.2, 0.03995, 0.104], [0.6, 0.08, 1]))).toBeUndefined();
    expect(falls(boxBetween([0.2, 0.0398, 0.104], [0.6, 0.08, 1]))).toBeCloseTo(0.004, 12);
    expect(falls(boxBetween([0.2, 0, 0.151], [0.6, 0.04, 1]))).toBeUndefined();
    expect(falls(boxBetween([0.2, 0, -0.5], [0.6, 0.04, -0.001]))).toBeUndefined();
    expect(falls(boxBetween([0.2, 0, 0.09], [0.6, 0.04, 1]))).toBeUndefined();
  });

  // A cube of 0.1 stood on its edge along y, over a ramp of 30° that goes up along x through the origin: its lowest edge lies over x = 0.05,
  // where the ramp is 0.05 tan 30° high; the ramp is flatter than its sides, so that nothing else meets it.
  it("meets a ramp with its lowest edge, by trigonometry", () => {
    const diagonal = turned(
      boxBetween([-0.05, 0, -0.05], [0.05, 0.1, 0.05]),
      { point: [0, 0, 0], axis: [0, 1, 0] },
      Math.PI / 4,
    );
    const ramp = turned(boxBetween([-1, 0, -1], [1, 0.1, 0]), { point: [0, 0, 0], axis: [0, -1, 0] }, Math.PI / 6);
    const height = 0.05 * Math.tan(Math.PI / 6) + 0.05 * Math.SQRT2;
    expect(falls(moved(diagonal, [0.05, 0, height + 0.013]), ramp)).toBeCloseTo(0.013, 9);
  });

  it("agrees with the depth of bodies in each other after the fall", () => {
    const leaf = turned(
      boxBetween([0.1, -0.1, 0.13], [0.4, 0.1, 1]),
      { point: [0.2, 0, 0.5], axis: [0.6, 0.64, 0.48] },
      0.03,
    );
    const way = falls(leaf);
    expect(way).toBeDefined();
    const deepAfter = (by: number): number => prismPenetration(moved(leaf, [0, 0, -by]), sill).depth;
    expect(deepAfter((way ?? 0) - 1e-6)).toBeLessThan(0);
    expect(deepAfter((way ?? 0) + 1e-6)).toBeGreaterThan(0);
  });
});
