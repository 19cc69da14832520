import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  capsuleToBox,
  closestPoints,
  nearestAlong,
  pointToSegment,
  type Segment,
  segmentDistance,
  segmentToBox,
} from "../../src/geometry/segment.ts";
import { distance, dot, lerp, subtract, type Vec3 } from "../../src/geometry/vector.ts";
import { between, boxes, motions, move, moveBox, points, uprightBox } from "./arbitraries.ts";

const segments: fc.Arbitrary<Segment> = fc.record({ from: points, to: points });
const along01 = between(0, 1);
/** Rounding of distances between bodies of some metres [m]; the foot of a perpendicular is found to half the digits only. */
const ROUNDING = 1e-9;

/** Distance of a point from an upright box at the origin, worked without the code under test. */
const pointToUpright = (p: Vec3, half: Vec3): number =>
  Math.hypot(...p.map((x, i) => Math.max(0, Math.abs(x) - (half[i] ?? 0))));

describe("segments", () => {
  it("measures by hand: (0, 3, 4) is 5 from the x axis, (12, 3, 4) is √(4 + 25) from its piece up to 10", () => {
    const piece: Segment = { from: [0, 0, 0], to: [10, 0, 0] };
    expect(pointToSegment([0, 3, 4], piece)).toBeCloseTo(5, 12);
    expect(pointToSegment([5, 3, 4], piece)).toBeCloseTo(5, 12);
    expect(pointToSegment([12, 3, 4], piece)).toBeCloseTo(Math.sqrt(29), 12);
    expect(nearestAlong(piece, [2.5, 9, 9])).toBeCloseTo(0.25, 12);
    expect(nearestAlong({ from: [1, 1, 1], to: [1, 1, 1] }, [2, 2, 2])).toBe(0);
  });

  it("finds crossing bars by hand: along x at z = 0 and along y at z = 2 are 2 apart over the crossing", () => {
    const found = closestPoints({ from: [-1, 0, 0], to: [3, 0, 0] }, { from: [0, -1, 2], to: [0, 1, 2] });
    expect(found.distance).toBeCloseTo(2, 12);
    expect([found.s, found.t]).toEqual([0.25, 0.5]);
    expect(distance(found.first, [0, 0, 0])).toBeLessThan(ROUNDING);
    expect(distance(found.second, [0, 0, 2])).toBeLessThan(ROUNDING);
  });

  it("handles parallel, end-to-end and pointlike segments", () => {
    expect(segmentDistance({ from: [0, 0, 0], to: [1, 0, 0] }, { from: [0.5, 3, 4], to: [9, 3, 4] })).toBeCloseTo(
      5,
      12,
    );
    expect(segmentDistance({ from: [0, 0, 0], to: [1, 0, 0] }, { from: [4, 4, 0], to: [9, 4, 0] })).toBeCloseTo(5, 12);
    expect(segmentDistance({ from: [0, 0, 0], to: [0, 0, 0] }, { from: [3, 4, 0], to: [3, 4, 0] })).toBeCloseTo(5, 12);
    expect(segmentDistance({ from: [0, 0, 0], to: [1, 0, 0] }, { from: [1, 0, 0], to: [1, 1, 0] })).toBe(0);
  });

  it("is never beaten by any two points of the segments, and does not depend on order or place", () => {
    fc.assert(
      fc.property(segments, segments, along01, along01, motions, (a, b, s, t, m) => {
        const least = segmentDistance(a, b);
        expect(least).toBeLessThanOrEqual(distance(lerp(a.from, a.to, s), lerp(b.from, b.to, t)) + ROUNDING);
        expect(Math.abs(segmentDistance(b, a) - least)).toBeLessThan(ROUNDING);
        const carry = (x: Segment): Segment => ({ from: move(m, x.from), to: move(m, x.to) });
        expect(Math.abs(segmentDistance(carry(a), carry(b)) - least)).toBeLessThan(ROUNDING);
      }),
    );
  });

  it("meets square where the nearest points lie within both segments", () => {
    fc.assert(
      fc.property(segments, segments, (a, b) => {
        const { first, second, s, t } = closestPoints(a, b);
        fc.pre(s > 0 && s < 1 && t > 0 && t < 1);
        expect(Math.abs(dot(subtract(first, second), subtract(a.to, a.from)))).toBeLessThan(1e-6);
      }),
    );
  });
});

describe("rods and boxes", () => {
  const cube = uprightBox([0, 0, 0], [1, 1, 1]);

  it("measures by hand: over a face 0.5, past an edge √(1 + 1), past a corner √3, through the middle 0", () => {
    expect(segmentToBox({ from: [-5, 0, 1.5], to: [5, 0, 1.5] }, cube)).toBeCloseTo(0.5, 12);
    expect(segmentToBox({ from: [2, 2, -5], to: [2, 2, 5] }, cube)).toBeCloseTo(Math.SQRT2, 12);
    expect(segmentToBox({ from: [2, 2, 2], to: [9, 9, 9] }, cube)).toBeCloseTo(Math.sqrt(3), 12);
    expect(segmentToBox({ from: [-5, 0.2, 0], to: [5, 0.3, 0.1] }, cube)).toBe(0);
    // Past the edge at 45°: the line x + z = 3 is (3 - 2)/√2 from the edge (1, y, 1).
    expect(segmentToBox({ from: [3, 0, 0], to: [0, 0, 3] }, cube)).toBeCloseTo(Math.SQRT1_2, 12);
  });

  it("takes the radius of a rod off, down to minus the radius inside", () => {
    expect(capsuleToBox({ from: [-5, 0, 1.5], to: [5, 0, 1.5] }, 0.1, cube)).toBeCloseTo(0.4, 12);
    expect(capsuleToBox({ from: [-5, 0, 1.05], to: [5, 0, 1.05] }, 0.1, cube)).toBeCloseTo(-0.05, 12);
    expect(capsuleToBox({ from: [0, 0, 0], to: [5, 0, 0] }, 0.1, cube)).toBe(-0.1);
  });

  it("is never beaten by a point of the segment, and a fine walk along it comes as close", () => {
    const half = between(0.1, 1);
    fc.assert(
      fc.property(segments, fc.tuple(half, half, half), (segment, h) => {
        const least = segmentToBox(segment, uprightBox([0, 0, 0], h));
        const steps = 400;
        let walked = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= steps; i += 1) {
          walked = Math.min(walked, pointToUpright(lerp(segment.from, segment.to, i / steps), h));
        }
        expect(least).toBeLessThanOrEqual(walked + ROUNDING);
        // The distance changes by at most the way walked: half a step of a segment up to 10.4 m long.
        expect(walked - least).toBeLessThanOrEqual(distance(segment.from, segment.to) / steps / 2 + ROUNDING);
      }),
    );
  });

  it("does not depend on place", () => {
    fc.assert(
      fc.property(segments, boxes, motions, (segment, box, m) => {
        const carried: Segment = { from: move(m, segment.from), to: move(m, segment.to) };
        expect(Math.abs(segmentToBox(carried, moveBox(m, box)) - segmentToBox(segment, box))).toBeLessThan(ROUNDING);
      }),
    );
  });
});
