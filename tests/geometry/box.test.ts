import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boundsOf, boundsOverlap } from "../../src/geometry/bounds.ts";
import { boxBounds, boxPenetration, corners, type OrientedBox } from "../../src/geometry/box.ts";
import { add, distance, length, scale, type Vec3 } from "../../src/geometry/vector.ts";
import { between, boxes, motions, moveBox, uprightBox } from "./arbitraries.ts";

/** What touching may come out as [m]: rounding over some metres. */
const TOUCH = 1e-12;
/** Rounding of the depth after bodies were carried about by a rigid motion of some metres [m]. */
const MOVED = 1e-11;

const shift = (box: OrientedBox, by: Vec3): OrientedBox => ({ ...box, centre: add(box.centre, by) });
/** A cube of side 2 turned 45° about z: its edges reach √2 along x and y. */
const diamond = (centre: Vec3): OrientedBox => ({
  centre,
  axes: [
    [Math.SQRT1_2, Math.SQRT1_2, 0],
    [-Math.SQRT1_2, Math.SQRT1_2, 0],
    [0, 0, 1],
  ],
  half: [1, 1, 1],
});

describe("bounds", () => {
  it("wraps points and refuses none", () => {
    expect(
      boundsOf([
        [1, 5, -2],
        [3, 4, 0],
      ]),
    ).toEqual({ min: [1, 4, -2], max: [3, 5, 0] });
    expect(() => boundsOf([])).toThrow(RangeError);
  });

  it("counts touching as overlapping, and a gap up to the margin", () => {
    const a = { min: [0, 0, 0], max: [1, 1, 1] } as const;
    const b = { min: [1, 0, 0], max: [2, 1, 1] } as const;
    const c = { min: [1.5, 0, 0], max: [2, 1, 1] } as const;
    expect(boundsOverlap(a, b)).toBe(true);
    expect(boundsOverlap(a, c)).toBe(false);
    expect(boundsOverlap(a, c, 0.5)).toBe(true);
    expect(boundsOverlap(c, a, 0.49)).toBe(false);
  });
});

describe("oriented boxes", () => {
  it("has its corners half a size from the middle, and by hand reaches √2 when turned 45°", () => {
    expect(corners(uprightBox([1, 2, 3], [1, 2, 3]))[0]).toEqual([0, 0, 0]);
    expect(corners(uprightBox([1, 2, 3], [1, 2, 3]))[7]).toEqual([2, 4, 6]);
    expect(boxBounds(diamond([0, 0, 0])).max[0]).toBeCloseTo(Math.SQRT2, 12);
  });

  it("measures upright cubes by hand: 2 m cubes 1.9 apart overlap 0.1, 2.0 touch, 2.5 leave 0.5, along the way between", () => {
    const cube = uprightBox([0, 0, 0], [1, 1, 1]);
    expect(boxPenetration(cube, uprightBox([1.9, 0.3, 0], [1, 1, 1])).depth).toBeCloseTo(0.1, 12);
    expect(Math.abs(boxPenetration(cube, uprightBox([2, 0.3, 0], [1, 1, 1])).depth)).toBeLessThanOrEqual(TOUCH);
    const apart = boxPenetration(cube, uprightBox([0, -2.5, 0.3], [1, 1, 1]));
    expect(apart.depth).toBeCloseTo(-0.5, 12);
    expect(distance(apart.axis, [0, -1, 0])).toBe(0);
  });

  it("finds the edge of a cube turned 45° against a face: reach √2 + 1 from the middle", () => {
    const cube = uprightBox([0, 0, 0], [1, 1, 1]);
    expect(Math.abs(boxPenetration(cube, diamond([1 + Math.SQRT2, 0, 0])).depth)).toBeLessThanOrEqual(TOUCH);
    expect(boxPenetration(cube, diamond([1.4 + Math.SQRT2, 0, 0])).depth).toBeCloseTo(-0.4, 12);
    expect(boxPenetration(cube, diamond([0.9 + Math.SQRT2, 0, 0])).depth).toBeCloseTo(0.1, 12);
  });

  it("needs an edge pair where edges cross: cubes turned 45° about y and about x, one over the other, touch at 2√2", () => {
    const h = Math.SQRT1_2;
    const lower: OrientedBox = {
      centre: [0, 0, 0],
      axes: [
        [h, 0, -h],
        [0, 1, 0],
        [h, 0, h],
      ],
      half: [1, 1, 1],
    };
    const upper = (z: number): OrientedBox => ({
      centre: [0, 0, z],
      axes: [
        [1, 0, 0],
        [0, h, h],
        [0, -h, h],
      ],
      half: [1, 1, 1],
    });
    // The ridges run along y and along x; each is √2 from its middle, and only their cross product, z, parts them.
    expect(Math.abs(boxPenetration(lower, upper(2 * Math.SQRT2)).depth)).toBeLessThanOrEqual(TOUCH);
    const apart = boxPenetration(lower, upper(2 * Math.SQRT2 + 0.1));
    expect(apart.depth).toBeCloseTo(-0.1, 12);
    expect(distance(apart.axis, [0, 0, 1])).toBeLessThan(TOUCH);
  });

  it("takes the first of equal axes: cubes over each other by 0.5 along both x and y part along x", () => {
    const found = boxPenetration(uprightBox([0, 0, 0], [1, 1, 1]), uprightBox([1.5, 1.5, 0], [1, 1, 1]));
    expect(found.depth).toBe(0.5);
    expect(distance(found.axis, [1, 0, 0])).toBe(0);
  });

  it("resolves a nanometre either way", () => {
    const cube = uprightBox([5, 5, 5], [0.02, 0.02, 1]);
    expect(boxPenetration(cube, uprightBox([5.04 - 1e-9, 5, 5], [0.02, 0.02, 1])).depth / 1e-9).toBeCloseTo(1, 3);
    expect(boxPenetration(cube, uprightBox([5.04 + 1e-9, 5, 5], [0.02, 0.02, 1])).depth / 1e-9).toBeCloseTo(-1, 3);
  });

  it("touches within 1e-12 m at any angle: a box moved along the axis of least penetration by its depth", () => {
    fc.assert(
      fc.property(boxes, boxes, (a, b) => {
        const { depth, axis } = boxPenetration(a, b);
        fc.pre(depth > 0);
        expect(length(axis)).toBeCloseTo(1, 12);
        expect(Math.abs(boxPenetration(a, shift(b, scale(axis, depth))).depth)).toBeLessThanOrEqual(MOVED);
      }),
    );
  });

  it("touches its neighbour across a shared face within 1e-12 m, wherever both are carried", () => {
    fc.assert(
      fc.property(motions, between(0.01, 1), (m, half) => {
        const a = moveBox(m, uprightBox([0, 0, 0], [half, 0.02, 0.02]));
        const b = moveBox(m, uprightBox([half + 0.02, 0, 0.1], [0.02, 0.02, 0.4]));
        expect(Math.abs(boxPenetration(a, b).depth)).toBeLessThanOrEqual(TOUCH);
      }),
    );
  });

  it("does not depend on order or place", () => {
    fc.assert(
      fc.property(boxes, boxes, motions, (a, b, m) => {
        const { depth } = boxPenetration(a, b);
        expect(Math.abs(boxPenetration(b, a).depth - depth)).toBeLessThanOrEqual(MOVED);
        expect(Math.abs(boxPenetration(moveBox(m, a), moveBox(m, b)).depth - depth)).toBeLessThanOrEqual(MOVED);
      }),
    );
  });

  it("never claims a gap wider than any two corners leave", () => {
    fc.assert(
      fc.property(boxes, boxes, (a, b) => {
        let nearest = Number.POSITIVE_INFINITY;
        for (const p of corners(a)) for (const q of corners(b)) nearest = Math.min(nearest, distance(p, q));
        expect(-boxPenetration(a, b).depth).toBeLessThanOrEqual(nearest + TOUCH);
      }),
    );
  });
});
