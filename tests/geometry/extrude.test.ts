import { describe, expect, it } from "vitest";
import { drum, extrude } from "../../src/geometry/extrude.ts";
import { prismBounds, prismVolume } from "../../src/geometry/prism.ts";

describe("extruded solids", () => {
  it("a triangle of 30 x 40 mm moved by 10 mm: half of 30·40·10 mm³, five faces, whichever way the loop runs", () => {
    const loop = [
      [0, 0, 0],
      [0.03, 0, 0],
      [0, 0.04, 0],
    ] as const;
    for (const one of [loop, [...loop].reverse()]) {
      const solid = extrude(one, [0, 0, 0.01]);
      expect(solid.faces).toHaveLength(5);
      expect(prismVolume(solid)).toBeCloseTo(6e-6, 15);
    }
  });

  it("a drum of n sides has n/2·r²·sin(2π/n) for its base (regular polygon in a circle)", () => {
    const solid = drum([1, 2, 3], [0, 0, -1], 0.05, 0.2, 12);
    expect(prismVolume(solid)).toBeCloseTo(0.2 * 6 * 0.05 ** 2 * Math.sin(Math.PI / 6), 12);
    expect(prismBounds(solid).min[2]).toBeCloseTo(2.8, 12);
  });
});
