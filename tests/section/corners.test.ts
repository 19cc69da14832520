import { describe, expect, it } from "vitest";
import type { Region } from "../../src/geometry/polygon.ts";
import { reentrantCorners } from "../../src/section/corners.ts";
import { toGrid } from "../../src/section/grid.ts";
import { box, ellipse, lightSquare, millimetres, rectangle, rounded, s40, solid } from "./shapes.ts";

/** Rooms of the re-entrant corners [mm], ascending. */
function rooms(region: Region): number[] {
  const grid = toGrid(region);
  return reentrantCorners(grid)
    .map(({ room }) => room * grid.step * 1000)
    .sort((a, b) => a - b);
}

describe("re-entrant corners", () => {
  it("a convex outline and a bore have none", () => {
    expect(rooms(solid(rectangle(40, 20)))).toEqual([]);
    expect(rooms({ outer: rectangle(40, 40), holes: [ellipse(8, 8, 16)] })).toEqual([]);
  });

  it("the inside of a box has four, with the wall as room", () => {
    const found = rooms(box(40, 30, 2));
    expect(found).toHaveLength(4);
    for (const room of found) expect(room).toBeCloseTo(2, 5);
  });

  it("S40 has two behind each lip and two at each slot's floor: 4 mm of lip, √8 mm of web", () => {
    const found = rooms(s40);
    expect(found).toHaveLength(16);
    for (const room of found.slice(0, 8)) expect(room).toBeCloseTo(Math.sqrt(8), 5);
    for (const room of found.slice(8)) expect(room).toBeCloseTo(4, 5);
  });

  it("a small fillet is one corner, a large one is smooth", () => {
    expect(rooms(solid(rounded(s40.outer, 0.3)))).toHaveLength(16);
    const tube = (r: number): Region => ({ outer: rectangle(40, 40), holes: [rounded(rectangle(36, 36), r)] });
    expect(rooms(tube(0.5))).toHaveLength(4);
    expect(rooms(tube(8))).toEqual([]);
  });

  it("the floor of a saw cut is one corner; its room is the wall behind, not the width of the cut", () => {
    const cut = solid(
      millimetres([
        [-20, 0],
        [20, 0],
        [20, 20],
        [0.25, 20],
        [0.25, 5],
        [-0.25, 5],
        [-0.25, 20],
        [-20, 20],
      ]),
    );
    const found = rooms(cut);
    expect(found).toHaveLength(1);
    expect(found[0]).toBeCloseTo(5, 5);
  });

  it("the light square has six a slot, flanks included, and four a hollow corner", () => {
    expect(rooms(lightSquare)).toHaveLength(4 * 6 + 4 * 4);
  });
});
