import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Rod, rodGap } from "../../src/facts/rods.ts";
import { add, cross, normalise, scale, subtract, type Vec3 } from "../../src/geometry/vector.ts";

const rod = (from: Vec3, to: Vec3, radius: number): Rod => ({ line: { from, to }, radius });
const upright = rod([0, 0, 0], [0, 0, 20], 3);

describe("room between round rods with flat ends", () => {
  it.each<[string, Rod, number]>([
    ["side by side: 10 − 3 − 2", rod([10, 0, 5], [10, 0, 30], 2), 5],
    ["end to end: 25 − 20", rod([0, 0, 25], [0, 0, 40], 2), 5],
    ["an end under a rod that lies across: 26 − 2 − 20", rod([-30, 0, 26], [30, 0, 26], 2), 4],
    ["crossing beside each other: 9 − 3 − 2", rod([-30, 9, 10], [30, 9, 10], 2), 4],
    ["touching end to end", rod([0, 0, 20], [0, 0, 40], 2), 0],
    ["of no length there is none", rod([0, 0, 30], [0, 0, 30], 2), Infinity],
  ])("%s", (_, other, gap) => {
    expect(rodGap(upright, other)).toBeCloseTo(gap, 9);
    expect(rodGap(other, upright)).toBeCloseTo(gap, 9);
  });

  it("is negative where they meet", () => {
    expect(rodGap(upright, rod([-30, 1, 10], [30, 1, 10], 2))).toBeLessThan(0);
    expect(rodGap(upright, rod([0, 0, 19], [0, 0, 40], 2))).toBeCloseTo(-1, 9);
  });

  it("is never more than the distance of two points of them", () => {
    const point = fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: -50, max: 50 }))).map((p) => p as unknown as Vec3);
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const inside = ({ line, radius }: Rod, t: number, out: number, turn: number): Vec3 => {
      const run = subtract(line.to, line.from);
      const u = normalise(cross(run, Math.abs(run[0]) > Math.abs(run[1]) ? [0, 1, 0] : [1, 0, 0]));
      const v = normalise(cross(run, u));
      const [c, s] = [Math.cos(2 * Math.PI * turn), Math.sin(2 * Math.PI * turn)];
      return add(add(line.from, scale(run, t)), add(scale(u, radius * out * c), scale(v, radius * out * s)));
    };
    const far = (a: Vec3, b: Vec3): number => Math.hypot(...subtract(a, b));
    fc.assert(
      fc.property(
        fc.tuple(point, point, point, point),
        fc.tuple(share, share, share, share, share, share),
        (ends, at) => {
          const [a, b] = [rod(ends[0], ends[1], 3), rod(ends[2], ends[3], 5)];
          fc.pre(far(ends[0], ends[1]) > 1 && far(ends[2], ends[3]) > 1);
          const [p, q] = [inside(a, at[0], at[1], at[2]), inside(b, at[3], at[4], at[5])];
          expect(rodGap(a, b)).toBeLessThanOrEqual(far(p, q) + 1e-9);
        },
      ),
    );
  });
});
