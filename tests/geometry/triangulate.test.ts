import { describe, expect, it } from "vitest";
import { area } from "../../src/geometry/polygon.ts";
import { triangulate } from "../../src/geometry/triangulate.ts";
import { cross2, subtract2, type Vec2 } from "../../src/geometry/vector.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";

type Region = Parameters<typeof triangulate>[0];

/** Sum of the triangles' areas; throws where one runs clockwise. */
function filled(region: Region): number {
  const points: readonly Vec2[] = [...region.outer, ...region.holes.flat()];
  const indices = triangulate(region);
  let sum = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [points[indices[i] ?? -1], points[indices[i + 1] ?? -1], points[indices[i + 2] ?? -1]];
    if (!a || !b || !c) throw new Error(`triangle ${i / 3} has a corner that does not exist`);
    const twice = cross2(subtract2(b, a), subtract2(c, a));
    expect(twice).toBeGreaterThanOrEqual(-1e-15);
    sum += twice / 2;
  }
  return sum;
}

describe("triangles", () => {
  it("fill a square with a square hole: 8 of them, 9 - 1 = 8 m², whichever way the rings run", () => {
    const outer: readonly Vec2[] = [
      [0, 0],
      [3, 0],
      [3, 3],
      [0, 3],
    ];
    const hole: readonly Vec2[] = [
      [1, 1],
      [2, 1],
      [2, 2],
      [1, 2],
    ];
    for (const one of [outer, [...outer].reverse()]) {
      for (const other of [hole, [...hole].reverse()]) {
        expect(triangulate({ outer: one, holes: [other] })).toHaveLength(8 * 3);
        expect(filled({ outer: one, holes: [other] })).toBeCloseTo(8, 12);
      }
    }
  });

  it("fill every profile in stock exactly: the same area as by Green's theorem", () => {
    const profiles = [...builtinStock().profiles.values()];
    expect(profiles.length).toBeGreaterThan(20);
    for (const { region } of profiles) expect(filled(region) / area(region)).toBeCloseTo(1, 9);
  });

  it("refuse a hole outside its region", () => {
    const outer: readonly Vec2[] = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ];
    expect(() =>
      triangulate({
        outer,
        holes: [
          [
            [5, 5],
            [6, 5],
            [6, 6],
          ],
        ],
      }),
    ).toThrow(RangeError);
  });
});
