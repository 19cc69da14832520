import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arcSize, WHOLE } from "../../src/geometry/arc.ts";
import { convexDepth } from "../../src/geometry/convex.ts";
import { discArc } from "../../src/geometry/disc-arc.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { between } from "./arbitraries.ts";

const REACH = 0.093;
const HALF = 0.0035;

/** A regular polygon that lies half inside, half outside the disc. */
function many(distance: number, radius: number): readonly Vec2[] {
  const n = 720;
  return Array.from({ length: n }, (_, i) => {
    const a = (2 * Math.PI * i) / n;
    return [distance + radius * Math.cos(a), radius * Math.sin(a)];
  });
}

function arm(angle: number): readonly Vec2[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [
    [0, -HALF],
    [REACH, -HALF],
    [REACH, HALF],
    [0, HALF],
  ].map(([x = 0, y = 0]) => [x * cos - y * sin, x * sin + y * cos]);
}

describe("arc a disc takes of an arm's turn", () => {
  it("beside the arm: asin((w + ρ)/d) to either side, worked for a head 13 mm wide 40 mm away", () => {
    const arc = discArc(REACH, HALF, { distance: 0.04, bearing: 1, radius: 0.0065 });
    expect(arc?.from).toBeCloseTo(1 - Math.asin(0.25), 6);
    expect(arc && arcSize(arc)).toBeCloseTo(2 * Math.asin(0.25), 6);
  });

  it("takes the whole turn at the axis and nothing out of reach", () => {
    expect(discArc(REACH, HALF, { distance: 0.0099, bearing: 0, radius: 0.0065 })).toEqual(WHOLE);
    expect(discArc(REACH, HALF, { distance: 0.1, bearing: 0, radius: 0.0065 })).toBeUndefined();
  });

  it("agrees with a polygon of 720 corners, tried just within and just beyond the arc", () => {
    fc.assert(
      fc.property(between(0.012, 0.098), between(0.002, 0.009), (distance, radius) => {
        const arc = discArc(REACH, HALF, { distance, bearing: 0, radius });
        if (arc === undefined || arcSize(arc) > 6) return;
        const half = arcSize(arc) / 2;
        expect(convexDepth(arm(half + 1e-3), many(distance, radius))).toBeLessThan(0);
        // Near the very end of its reach the arc is too short to step inside it.
        if (half > 0.1) expect(convexDepth(arm(half - 1e-3), many(distance, radius))).toBeGreaterThan(0);
      }),
    );
  });
});
