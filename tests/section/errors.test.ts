import { describe, expect, it } from "vitest";
import type { Region } from "../../src/geometry/polygon.ts";
import { sectionProperties } from "../../src/section/section-properties.ts";
import { ellipse, millimetres, placed, rectangle, s40, scaled, solid } from "./shapes.ts";

const square = rectangle(40, 40);

const faulty: readonly (readonly [string, Region, RegExp])[] = [
  [
    "two points",
    solid(
      millimetres([
        [0, 0],
        [1, 0],
      ]),
    ),
    /outer ring has 2 points, a polygon needs three/,
  ],
  ["a hole of one point", { outer: square, holes: [millimetres([[0, 0]])] }, /hole 1 has 1 points/],
  [
    "no finite number",
    solid(
      millimetres([
        [0, 0],
        [40, 0],
        [Number.NaN, 40],
      ]),
    ),
    /point 3 of the outer ring is \(NaN, 0.04\)/,
  ],
  [
    "all points the same",
    solid(
      millimetres([
        [3, 3],
        [3, 3],
        [3, 3],
      ]),
    ),
    /no area/,
  ],
  [
    "points on one line",
    solid(
      millimetres([
        [0, 0],
        [20, 0],
        [40, 0],
      ]),
    ),
    /no area|intersects itself/,
  ],
  [
    "a bow tie",
    solid(
      millimetres([
        [0, 0],
        [40, 40],
        [40, 0],
        [0, 40],
      ]),
    ),
    /edge 1 of the outer ring crosses or touches edge 3 .*intersects itself/,
  ],
  [
    "a spike of no width",
    solid(
      millimetres([
        [0, 0],
        [40, 0],
        [60, 0],
        [40, 0],
        [40, 40],
        [0, 40],
      ]),
    ),
    /intersects itself/,
  ],
  [
    "a corner on another edge",
    solid(
      millimetres([
        [0, 0],
        [40, 0],
        [40, 40],
        [20, 0],
        [0, 40],
      ]),
    ),
    /intersects itself/,
  ],
  ["a hole outside", { outer: square, holes: [rectangle(4, 4, 50)] }, /hole 1 reaches outside the outer ring/],
  ["a hole far outside", { outer: square, holes: [rectangle(4, 4, 5000)] }, /hole 1 reaches outside the outer ring/],
  [
    "a hole through the outline",
    { outer: s40.outer, holes: [rectangle(10, 10, 0, -15)] },
    /outer ring crosses or touches edge \d of hole 1/,
  ],
  ["a hole in a slot", { outer: s40.outer, holes: [rectangle(4, 4, 0, -13)] }, /hole 1 lies outside the outer ring/],
  ["a hole half outside", { outer: square, holes: [rectangle(10, 10, 20)] }, /hole 1 reaches outside the outer ring/],
  ["an outline of 5001 points", solid(ellipse(20, 20, 5001)), /5001 points are more than the 5000 a section may have/],
  ["lengths in nanometres", scaled(solid(square), 1e9), /is no size of a bar; lengths are metres/],
  [
    "a hole touching the outline",
    { outer: square, holes: [rectangle(10, 10, 15)] },
    /outer ring crosses or touches edge \d of hole 1/,
  ],
  [
    "holes that overlap",
    { outer: square, holes: [rectangle(10, 10), rectangle(10, 10, 5, 5)] },
    /hole 1 crosses or touches edge \d of hole 2/,
  ],
  ["a hole in a hole", { outer: square, holes: [rectangle(4, 4), rectangle(10, 10)] }, /hole 1 lies inside hole 2/],
  ["the same hole twice", { outer: square, holes: [rectangle(4, 4), rectangle(4, 4)] }, /hole 1 crosses or touches/],
  ["a hole that leaves nothing", { outer: square, holes: [square] }, /crosses or touches/],
];

describe("a region that is no section is refused, and why is said", () => {
  for (const [name, region, message] of faulty) {
    it(name, () => {
      expect(() => sectionProperties(region)).toThrow(RangeError);
      expect(() => sectionProperties(region)).toThrow(message);
      // Wherever it is drawn.
      expect(() => sectionProperties(placed(region, 0, 0.5, 0.25))).toThrow(RangeError);
    });
  }

  it("but repeated points and points along a straight edge are harmless", () => {
    const plain = sectionProperties(solid(square));
    const fussy = sectionProperties(
      solid(
        millimetres([
          [-20, -20],
          [-20, -20],
          [0, -20],
          [20, -20],
          [20, 20],
          [20, 20],
          [-20, 20],
          [-20, -20],
        ]),
      ),
    );
    expect(fussy.A).toBeCloseTo(plain.A, 15);
    expect(Math.abs(fussy.J / plain.J - 1)).toBeLessThan(1e-3);
  });
});
