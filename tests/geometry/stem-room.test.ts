import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prismFromBox } from "../../src/geometry/prism.ts";
import type { AxisPose } from "../../src/geometry/seen-along.ts";
import { stemMeets } from "../../src/geometry/stem-room.ts";
import { rotateAbout } from "../../src/geometry/vector.ts";
import { between, boxes, motions, move, moveBox, turn, uprightBox } from "./arbitraries.ts";

const upright: AxisPose = { apex: [0, 0, 0], axis: [0, 0, 1], zero: [1, 0, 0] };
const stem = { radius: 0.0035, from: 0, to: 0.038 };
const block = (centre: readonly [number, number, number], half: readonly [number, number, number]) =>
  prismFromBox(uprightBox(centre, half));

describe("room of a stem", () => {
  it("ends where a body lies across it, and is free beyond its end, before its start and beside it", () => {
    expect(stemMeets(upright, stem, block([0, 0, 0.05], [0.02, 0.02, 0.02]))).toBeCloseTo(0.03, 12);
    expect(stemMeets(upright, stem, block([0, 0, 0.058], [0.02, 0.02, 0.02]))).toBe(Infinity);
    expect(stemMeets(upright, stem, block([0, 0, -0.02], [0.02, 0.02, 0.02]))).toBe(Infinity);
    expect(stemMeets(upright, stem, block([0.0235, 0, 0.02], [0.02, 0.02, 0.01]))).toBe(Infinity);
    expect(stemMeets(upright, stem, block([0.0234, 0, 0.02], [0.02, 0.02, 0.01]))).toBeCloseTo(0.01, 12);
  });

  it("starts at once inside a body that it stands in", () => {
    expect(stemMeets(upright, stem, block([0, 0, 0], [0.02, 0.02, 0.02]))).toBe(0);
  });

  it("is round: a corner on the diagonal comes nearer than a face could", () => {
    // Corner at (2.6, 2.6) mm: 3.677 mm off the axis. A face at 2.6 mm would be inside.
    expect(stemMeets(upright, stem, block([0.0126, 0.0126, 0.02], [0.01, 0.01, 0.01]))).toBe(Infinity);
    // At (2.4, 2.4): 3.394 mm.
    expect(stemMeets(upright, stem, block([0.0124, 0.0124, 0.02], [0.01, 0.01, 0.01]))).toBeCloseTo(0.01, 12);
  });

  it("meets a slab that leans by an angle at h − r·tan of it", () => {
    for (const angle of [0.1, Math.PI / 6, Math.PI / 4]) {
      // The lower face of the slab crosses the axis at 25 mm.
      const normal = rotateAbout([0, 0, 1], [0, 1, 0], angle);
      const slab = prismFromBox({
        centre: [normal[0] * 0.1, 0, 0.025 + normal[2] * 0.1],
        axes: [rotateAbout([1, 0, 0], [0, 1, 0], angle), [0, 1, 0], normal],
        half: [1, 1, 0.1],
      });
      // Touching counts as free up to 1e-9 m.
      expect(stemMeets(upright, stem, slab)).toBeCloseTo(0.025 - stem.radius * Math.tan(angle), 8);
    }
  });

  it("does not depend on place", () => {
    fc.assert(
      fc.property(boxes, motions, between(0.2, 0.8), (box, m, radius) => {
        const wide = { radius, from: 0, to: 1 };
        const pose: AxisPose = { apex: move(m, [0, 0, 0]), axis: turn(m, [0, 0, 1]), zero: turn(m, [1, 0, 0]) };
        const still = stemMeets(upright, wide, prismFromBox(box));
        const moved = stemMeets(pose, wide, prismFromBox(moveBox(m, box)));
        // A graze may count or not.
        if (Number.isFinite(still) && Number.isFinite(moved)) expect(moved).toBeCloseTo(still, 4);
      }),
    );
  });
});
