import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { depthOrder } from "../../src/geometry/depth-order.ts";
import { type Prism, prismFromBox } from "../../src/geometry/prism.ts";
import { prismPenetration } from "../../src/geometry/prism-penetration.ts";
import { along, dot, normalise, perpendicularPair, type Vec3 } from "../../src/geometry/vector.ts";
import { boxes, directions, uprightBox } from "./arbitraries.ts";

const bar = (centre: Vec3, half: Vec3): Prism => prismFromBox(uprightBox(centre, half));

/** Where a ray against the view direction leaves a convex body last: how near to the eye its seen surface is; undefined on a miss. */
function nearest(body: Prism, through: Vec3, toward: Vec3): number | undefined {
  let [low, high] = [-Infinity, Infinity];
  for (const { normal, vertices } of body.faces) {
    const [corner] = vertices;
    if (!corner) continue;
    const distance = dot(corner, normal) - dot(through, normal);
    const slope = dot(toward, normal);
    if (Math.abs(slope) < 1e-12) {
      if (distance < 0) return undefined;
    } else if (slope > 0) high = Math.min(high, distance / slope);
    else low = Math.max(low, distance / slope);
  }
  return high - low > 1e-6 ? high : undefined;
}

/** Points of a grid over the picture at which a later body of the order lies behind an earlier one that it covers. */
function wrongPixels(bodies: readonly Prism[], order: readonly number[], toward: Vec3): number {
  const [u, v] = perpendicularPair(toward);
  let wrong = 0;
  for (let i = -40; i <= 40; i++) {
    for (let j = -40; j <= 40; j++) {
      const through = along(along([0, 0, 0], u, i * 0.0513), v, j * 0.0517);
      let front = -Infinity;
      for (const index of order) {
        const body = bodies[index];
        const at = body && nearest(body, through, toward);
        if (at === undefined) continue;
        if (at < front - 1e-5) wrong++;
        front = Math.max(front, at);
      }
    }
  }
  return wrong;
}

const ISOMETRIC = normalise([1, -1, 1]);

describe("the painter's order", () => {
  it("puts a bar in front of the one its seen face hides, whatever their middles say", () => {
    // A long bar along x whose middle is nearer to the eye than that of the post that stands before its far end.
    const long = bar([1, 0, 0], [2, 0.02, 0.02]);
    const post = bar([-0.9, -0.04, 0], [0.02, 0.02, 0.5]);
    expect(dot([1, 0, 0], ISOMETRIC)).toBeGreaterThan(dot([-0.9, -0.04, 0], ISOMETRIC));
    expect(depthOrder([long, post], ISOMETRIC).order).toEqual([0, 1]);
    expect(depthOrder([post, long], ISOMETRIC).order).toEqual([1, 0]);
  });

  it("agrees with rays cast through the picture, for boxes at any angle that do not run into each other", () => {
    fc.assert(
      fc.property(fc.array(boxes, { minLength: 2, maxLength: 9 }), directions, (list, towards) => {
        const bodies: Prism[] = [];
        for (const body of list.map(prismFromBox))
          if (bodies.every((other) => prismPenetration(other, body).depth < 0)) bodies.push(body);
        const toward = normalise(towards);
        const { order, entangled, circular } = depthOrder(bodies, toward);
        expect(entangled).toEqual([]);
        expect([...order].sort((a, b) => a - b)).toEqual(bodies.map((_, i) => i));
        if (circular.length === 0) expect(wrongPixels(bodies, order, toward)).toBe(0);
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it("names pairs that run into each other, where they are seen over each other", () => {
    const a = bar([0, 0, 0], [0.5, 0.02, 0.02]);
    const b = bar([0, 0, 0], [0.02, 0.5, 0.02]);
    expect(depthOrder([a, b], ISOMETRIC)).toMatchObject({ entangled: [[0, 1]], circular: [] });
  });

  it("says of three bars that lie over each other in a circle that one order was given up, and paints all the same", () => {
    // Seen from above: a over b over c over a.
    const tilted = (turn: number): Prism => {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const along_: Vec3 = normalise([-s, c, 0.25]);
      const across: Vec3 = [c, s, 0];
      const over: Vec3 = normalise([-0.25 * -s, -0.25 * c, 1]);
      return prismFromBox({ centre: [0.3 * c, 0.3 * s, 0], axes: [along_, across, over], half: [0.9, 0.03, 0.03] });
    };
    const bodies = [0, 1, 2].map((k) => tilted((2 * Math.PI * k) / 3));
    const found = depthOrder(bodies, [0, 0, 1]);
    expect(found.entangled).toEqual([]);
    expect(found.circular).toHaveLength(1);
    expect([...found.order].sort()).toEqual([0, 1, 2]);
  });
});
