import { describe, expect, it } from "vitest";
import { prismFromBox } from "../../src/geometry/prism.ts";
import { prismPenetration } from "../../src/geometry/prism-penetration.ts";
import { turned, turnUntilDeep } from "../../src/geometry/turning-body.ts";
import { normalise } from "../../src/geometry/vector.ts";
import { boxBetween } from "./box-between.ts";

const pin = { point: [0, 0, 0], axis: [0, 0, -1] } as const;
const FINE = 1e-7;

describe("turnUntilDeep", () => {
  // A leaf W = 0.7 m wide and T = 0.045 m deep turns towards −y about its front edge: its back corner (W, T) goes out to
  // R = √(W² + T²) = 0.701445 m before it comes in, so a jamb W + g away is met for g < 1.445 mm, at φ − acos((W + g) / R), φ = atan(T / W).
  const [w, t] = [0.7, 0.045];
  const leaf = boxBetween([0, 0, 0], [w, t, 1]);
  const jamb = (gap: number) => boxBetween([w + gap, 0, 0], [w + gap + 0.045, 0.045, 1]);

  it("meets a jamb with the back corner of a leaf, by trigonometry", () => {
    const r = Math.hypot(w, t);
    const met = turnUntilDeep(leaf, jamb(0.001), pin, 1.5, FINE);
    expect(met).toBeCloseTo(Math.atan2(t, w) - Math.acos((w + 0.001) / r), 4);
    expect(turnUntilDeep(leaf, jamb(r - w - 1e-5), pin, 1.5, FINE)).toBeDefined();
    expect(turnUntilDeep(leaf, jamb(r - w + 1e-5), pin, 1.5, FINE)).toBeUndefined();
  });

  it("meets a wall before it with its free front corner, at asin(distance / width)", () => {
    const wall = boxBetween([0.3, -2, 0], [2, -0.2, 1]);
    expect(turnUntilDeep(leaf, wall, pin, 1.5, FINE)).toBeCloseTo(Math.asin(0.2 / w), 5);
  });

  it("says nothing of what lies above it, and 0 of what it stands in", () => {
    expect(turnUntilDeep(leaf, boxBetween([-2, -2, 1], [2, 2, 2]), pin, 1.5, FINE)).toBeUndefined();
    expect(turnUntilDeep(leaf, boxBetween([0.5, 0.02, 0], [0.6, 0.2, 1]), pin, 1.5, FINE)).toBe(0);
  });

  it("finds thin things between two positions, as a scan in 4 000 steps does", () => {
    let seed = 7;
    const random = () => {
      seed = (seed * 48271) % 2147483647;
      return seed / 2147483647;
    };
    let hits = 0;
    for (let round = 0; round < 12; round++) {
      const angle = -0.2 - 1.2 * random();
      const far = 0.2 + 0.55 * random();
      const u = normalise([Math.cos(angle), Math.sin(angle), 0]);
      const thin = prismFromBox({
        centre: [far * u[0], far * u[1], 0.5],
        axes: [u, [-u[1], u[0], 0], [0, 0, 1]],
        half: [0.002, 0.0005, 0.2],
      });
      const met = turnUntilDeep(leaf, thin, pin, 1.6, 1e-4);
      let scanned: number | undefined;
      for (let i = 0; i <= 4000 && scanned === undefined; i++) {
        const at = (1.6 * i) / 4000;
        if (prismPenetration(turned(leaf, pin, at), thin).depth > 1e-4) scanned = at;
      }
      expect(met === undefined).toBe(scanned === undefined);
      if (met === undefined || scanned === undefined) continue;
      hits++;
      expect(Math.abs(met - scanned)).toBeLessThan(1e-3);
    }
    expect(hits).toBeGreaterThan(3);
  });
});
