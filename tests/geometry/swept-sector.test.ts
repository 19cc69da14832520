import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Arc, arcSize, arcsOverlap, FULL_TURN, WHOLE } from "../../src/geometry/arc.ts";
import { boxPenetration, type OrientedBox } from "../../src/geometry/box.ts";
import { prismFromBox } from "../../src/geometry/prism.ts";
import type { AxisPose } from "../../src/geometry/seen-along.ts";
import {
  type Arm,
  besideSweep,
  blockedArcs,
  freeArcs,
  sectorHits,
  widestArc,
} from "../../src/geometry/swept-sector.ts";
import { add, rotateAbout, scale } from "../../src/geometry/vector.ts";
import { between, boxes, motions, move, moveBox, turn, uprightBox } from "./arbitraries.ts";

/** Rounding of an angle [rad]. */
const ANGLE = 1e-10;
const upright: AxisPose = { apex: [0, 0, 0], axis: [0, 0, 1], zero: [1, 0, 0] };
/** The short arm of a key laid flat: 150 mm reach, 20 mm thick, 10 mm high. */
const arm: Arm = { radius: 0.15, halfWidth: 0.01, zMin: 0, zMax: 0.01 };
const block = (centre: readonly [number, number, number], half: readonly [number, number, number]) =>
  prismFromBox(uprightBox(centre, half));
/** A wall whose near face is square to the direction at `angle`, `d` away from the axis, long enough to count as endless. */
const wall = (d: number, angle: number) =>
  prismFromBox({
    centre: rotateAbout([d + 1, 0, 0], [0, 0, 1], angle),
    axes: [rotateAbout([1, 0, 0], [0, 0, 1], angle), rotateAbout([0, 1, 0], [0, 0, 1], angle), [0, 0, 1]],
    half: [1, 9, 1],
  });
/** Half the angle a wall at distance d blocks: where R·cos θ + w·sin θ, the far corner's reach towards it, comes to d. */
const wallHalf = (d: number): number =>
  Math.acos(d / Math.hypot(arm.radius, arm.halfWidth)) + Math.atan2(arm.halfWidth, arm.radius);

const expectArc = (actual: Arc | undefined, from: number, to: number): void => {
  expect(actual?.from).toBeCloseTo(from, 10);
  expect(actual?.to).toBeCloseTo(to, 10);
};

describe("swept sector", () => {
  it("swings the whole turn where nothing stands, or stands beyond reach, over, under or just at the arm", () => {
    expect(freeArcs(upright, arm, [])).toEqual([WHOLE]);
    for (const obstacle of [
      block([1, 0, 0], [0.5, 0.5, 0.5]),
      block([0.1, 0, 0.06], [0.05, 0.05, 0.05]),
      block([0.1, 0, -0.05], [0.05, 0.05, 0.05]),
    ]) {
      expect(freeArcs(upright, arm, [obstacle])).toEqual([WHOLE]);
    }
  });

  it("works a post by hand: its corner (100, 20) mm meets the arm's side at atan(0.2) + asin(10/√10400) = 0.29561 rad", () => {
    const half = Math.atan(0.2) + Math.asin(0.01 / Math.hypot(0.1, 0.02));
    expect(half).toBeCloseTo(0.29561, 4);
    const free = freeArcs(upright, arm, [block([0.15, 0, 0], [0.05, 0.02, 0.5])]);
    expect(free.length).toBe(1);
    expectArc(free[0], half, FULL_TURN - half);
  });

  it("meets an endless wall in closed form: acos(d/√(R² + w²)) + atan(w/R) to either side", () => {
    for (const d of [0.02, 0.05, 0.1, 0.15]) {
      const [free, ...rest] = freeArcs(upright, arm, [wall(d, 0)]);
      expect(rest).toEqual([]);
      expectArc(free, wallHalf(d), FULL_TURN - wallHalf(d));
    }
  });

  it("leaves between two walls of a corner what each leaves, and nothing inside four walls", () => {
    const d = 0.1;
    const [free, ...rest] = freeArcs(upright, arm, [wall(d, 0), wall(d, Math.PI / 2)]);
    expect(rest).toEqual([]);
    expectArc(free, Math.PI / 2 + wallHalf(d), FULL_TURN - wallHalf(d));
    expect(
      freeArcs(
        upright,
        arm,
        [0, 1, 2, 3].map((k) => wall(0.09, (k * Math.PI) / 2)),
      ),
    ).toEqual([]);
    // At 149 mm four walls leave four free arcs, each a quarter less twice a half.
    const four = freeArcs(
      upright,
      arm,
      [0, 1, 2, 3].map((k) => wall(0.149, (k * Math.PI) / 2)),
    );
    expect(four.length).toBe(4);
    for (const arc of four) expect(arcSize(arc)).toBeCloseTo(Math.PI / 2 - 2 * wallHalf(0.149), 10);
    expect(widestArc([...four, { from: 0, to: 3 }])).toEqual({ from: 0, to: 3 });
    expect(widestArc([])).toBeUndefined();
  });

  it("is blocked all round by what covers the axis", () => {
    expect(blockedArcs(upright, arm, block([0.005, 0, 0], [0.02, 0.02, 0.5]))).toEqual([WHOLE]);
  });

  it("says whether a swing of 60° hits", () => {
    const post = block([0.15, 0, 0], [0.05, 0.02, 0.5]);
    expect(sectorHits(upright, arm, { from: 0.3, to: 0.3 + Math.PI / 3 }, post)).toBe(false);
    expect(sectorHits(upright, arm, { from: 0.29, to: 0.29 + Math.PI / 3 }, post)).toBe(true);
    expect(sectorHits(upright, arm, { from: 6, to: 6.2 }, post)).toBe(true);
  });

  it("refuses a pose without axis or with its zero along the axis", () => {
    const post = block([0.15, 0, 0], [0.05, 0.02, 0.5]);
    expect(() => freeArcs({ ...upright, axis: [0, 0, 0] }, arm, [post])).toThrow(RangeError);
    expect(() => freeArcs({ ...upright, zero: [0, 0, 2] }, arm, [post])).toThrow(RangeError);
  });

  it("lets an arm that begins away from the axis pass a pin that stands nearer: free beside the axis, blocked from 80 mm out", () => {
    const pin = block([0.07, 0, 0], [0.005, 0.005, 0.5]);
    expect(freeArcs(upright, { ...arm, inner: 0.08 }, [pin])).toEqual([WHOLE]);
    // From 74 mm out it meets the pin, 75 mm far, until its inner corner (74, -10) leaves the pin's side y = 5: 74·sin a - 10·cos a = 5.
    const [free, ...rest] = freeArcs(upright, { ...arm, inner: 0.074 }, [pin]);
    const half = Math.atan(10 / 74) + Math.asin(5 / Math.hypot(74, 10));
    expect(rest).toEqual([]);
    expectArc(free, half, FULL_TURN - half);
  });

  it("agrees with the box test at every degree, for boxes at any angle and arms that begin at the axis or away from it", () => {
    const armBox = (long: Arm, angle: number): OrientedBox => {
      const spin = (v: readonly [number, number, number]) => rotateAbout(v, [0, 0, 1], angle);
      const { inner = 0, radius } = long;
      return {
        centre: add(spin([(inner + radius) / 2, 0, 0]), [0, 0, (long.zMin + long.zMax) / 2]),
        axes: [spin([1, 0, 0]), spin([0, 1, 0]), [0, 0, 1]],
        half: [(radius - inner) / 2, long.halfWidth, (long.zMax - long.zMin) / 2],
      };
    };
    fc.assert(
      fc.property(boxes, between(0, 0.5), between(0, 1), (box, near, inner) => {
        const long: Arm = { inner, radius: 1.2, halfWidth: 0.1, zMin: -0.1, zMax: 0.3 };
        const obstacle: OrientedBox = { ...box, centre: scale(box.centre, near) };
        const blocked = blockedArcs(upright, long, prismFromBox(obstacle));
        for (let degree = 0; degree < 360; degree += 1) {
          const angle = (degree * FULL_TURN) / 360;
          const { depth } = boxPenetration(armBox(long, angle), obstacle);
          // Within a micrometre of touching either answer is right.
          if (Math.abs(depth) < 1e-6) continue;
          const hit = blocked.some((arc) => arcsOverlap(arc, { from: angle, to: angle + 1e-9 }));
          expect({ degree, hit }).toEqual({ degree, hit: depth > 0 });
        }
      }),
    );
  });

  it("never calls an obstacle beside a sweep that hits it, and sees that most are", () => {
    let beside = 0;
    fc.assert(
      fc.property(
        boxes,
        between(0, 1.3),
        between(0, 1),
        between(0, 6),
        between(0.1, 3),
        (box, near, inner, from, size) => {
          const long: Arm = { inner, radius: 1.2, halfWidth: 0.3, zMin: -0.1, zMax: 0.3 };
          const obstacle = prismFromBox({ ...box, centre: scale(box.centre, near) });
          const arc = { from, to: from + size };
          if (!besideSweep(upright, long, arc, obstacle)) return;
          beside += 1;
          expect(blockedArcs(upright, long, obstacle).some((blocked) => arcsOverlap(blocked, arc))).toBe(false);
        },
      ),
    );
    expect(beside).toBeGreaterThan(10);
  });

  it("agrees with the box test for pins thinner than the arm, at every quarter degree", () => {
    const pin = between(0.002, 0.006);
    const angle = between(0, 6);
    fc.assert(
      fc.property(pin, pin, angle, angle, between(0.02, 0.16), (a, b, at, tilt, reach) => {
        const z = [0, 0, 1] as const;
        const obstacle: OrientedBox = {
          centre: rotateAbout([reach, 0, 0], z, at),
          axes: [rotateAbout([1, 0, 0], z, tilt), rotateAbout([0, 1, 0], z, tilt), z],
          half: [a, b, 0.1],
        };
        const blocked = blockedArcs(upright, arm, prismFromBox(obstacle));
        const armBox = uprightBox([arm.radius / 2, 0, 0], [arm.radius / 2, arm.halfWidth, 1]);
        for (let step = 0; step < 4 * 360; step += 1) {
          const turned = (step * FULL_TURN) / (4 * 360);
          const { depth } = boxPenetration(moveBox({ axis: z, angle: turned, shift: [0, 0, 0] }, armBox), obstacle);
          if (Math.abs(depth) < 1e-8) continue;
          const hit = blocked.some((arc) => arcsOverlap(arc, { from: turned, to: turned + 1e-9 }));
          if (hit !== depth > 0) throw new Error(`step ${step}: hit ${hit}, depth ${depth}`);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("does not depend on place", () => {
    fc.assert(
      fc.property(boxes, motions, (box, m) => {
        const pose: AxisPose = {
          apex: move(m, upright.apex),
          axis: turn(m, upright.axis),
          zero: turn(m, upright.zero),
        };
        const near = { ...box, centre: scale(box.centre, 0.2) };
        const still = blockedArcs(upright, arm, prismFromBox(near));
        const moved = blockedArcs(pose, arm, prismFromBox(moveBox(m, near)));
        const size = (arcs: readonly Arc[]): number => arcs.reduce((sum, arc) => sum + arcSize(arc), 0);
        // A graze of 1e-9 m may count or not; at 150 mm reach it is at most 2·√(2·1e-9/0.15) = 2.3e-4 rad long.
        expect(Math.abs(size(moved) - size(still))).toBeLessThan(2.5e-4 + ANGLE);
      }),
    );
  });
});
