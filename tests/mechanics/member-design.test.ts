import { describe, expect, it } from "vitest";
import { criticalMoment, lateralReduction } from "../../src/mechanics/design/lateral-torsional.ts";
import { thicknessReduction } from "../../src/mechanics/design/local-buckling.ts";

describe("lateral-torsional buckling", () => {
  it("of a narrow rectangle under uniform moment is π/L √(EI GJ) (Timoshenko and Gere, ch. 6)", () => {
    // 5 × 100 mm, L = 1 m, E = 70 GPa, G = 27 GPa: I = 100·5³/12 mm⁴ = 1041.67, J = 100·5³/3·(1 − 0.63/20) = 4035.4 mm⁴;
    // √(72.917 · 108.956) = 89.134 N·m², × π = 280.0 N·m.
    expect(criticalMoment(70e9 * 1041.667e-12, 27e9 * 4035.4e-12, 0, 1)).toBeCloseTo(280.02, 1);
  });

  it("is dearer by √(1 + π²EIw/GJL²) where warping helps", () => {
    expect(criticalMoment(100, 50, (50 * 4) / Math.PI ** 2, 2) / criticalMoment(100, 50, 0, 2)).toBeCloseTo(
      Math.SQRT2,
      12,
    );
  });

  it("reduces nothing up to λ = 0.4; at λ = 1 by hand φ = (1 + 0.2·0.6 + 1)/2 = 1.06, χ = 1/(1.06 + √0.1236) (EN 1999-1-1, 6.3.2.2, from memory)", () => {
    expect(lateralReduction(0.4)).toBe(1);
    expect(lateralReduction(1)).toBeCloseTo(1 / (1.06 + Math.sqrt(0.1236)), 12);
    expect(lateralReduction(3)).toBeLessThan(1 / 9);
  });
});

describe("thin walls (EN 1999-1-1, Table 6.3, outstands and class B from memory)", () => {
  it("count whole up to their limits: 22 ε and 6 ε in class A, 18 ε and 5 ε in class B", () => {
    for (const [part, beta3A, beta3B] of [
      ["internal", 22, 18],
      ["outstand", 6, 5],
    ] as const) {
      expect(thicknessReduction(beta3A, 250, part, "A")).toBe(1);
      expect(thicknessReduction(beta3B, 250, part, "B")).toBe(1);
      expect(thicknessReduction(beta3A * 1.2, 250, part, "A")).toBeLessThan(1);
      expect(thicknessReduction(beta3B * 1.2, 250, part, "B")).toBeLessThan(1);
    }
  });

  it("of 12 ε as an outstand keep 10/12 − 24/144 = 2/3 of their thickness", () => {
    expect(thicknessReduction(12, 250, "outstand")).toBeCloseTo(2 / 3, 12);
  });
});
