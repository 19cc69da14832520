import { describe, expect, test } from "vitest";
import { elasticGroup } from "../../src/mechanics/fasteners/elastic-group.ts";
import { slipOfGroup } from "../../src/mechanics/fasteners/slip-group.ts";
import { randomNumbers } from "./random-frame.ts";

describe("elastic group", () => {
  test.each([1, 2, 3])("forces balance the load, seed %i", (seed) => {
    const random = randomNumbers(seed);
    const fasteners = Array.from({ length: 5 }, () => ({ at: [random(), random()] as const, weight: 0.5 + random() }));
    const load = { force: [300 * random(), -200] as const, at: [2, -1] as const, moment: 40 };
    const { forces } = elasticGroup(fasteners, load);
    const sum = (pick: (f: readonly [number, number], i: number) => number): number =>
      forces.reduce((total, f, i) => total + pick(f, i), 0);
    expect(sum(([x]) => x)).toBeCloseTo(load.force[0], 9);
    expect(sum(([, y]) => y)).toBeCloseTo(load.force[1], 9);
    const about = sum(([x, y], i) => (fasteners[i]?.at[0] ?? 0) * y - (fasteners[i]?.at[1] ?? 0) * x);
    expect(about).toBeCloseTo(40 + 2 * load.force[1] + load.force[0], 9);
  });

  test("refuses what nothing can take", () => {
    expect(() => elasticGroup([], { force: [1, 0], at: [0, 0] })).toThrow(RangeError);
    expect(() => elasticGroup([{ at: [0, 0] }], { force: [1, 0], at: [0, 1] })).toThrow(RangeError);
  });
});

describe("slip of a group", () => {
  const pair = [-0.02, 0.02].map((y) => ({ at: [0, y] as const, slip: 1000 }));

  test("a central force is shared: n × slip, straight on", () => {
    const found = slipOfGroup(pair, { force: [0, -1], at: [0, 0.5] });
    expect(found.upper).toBeCloseTo(2000, 4);
    expect(found.centre).toBeUndefined();
  });

  test("two in line under an eccentric force: closed form of the instantaneous centre", () => {
    const e = 0.12;
    const s = 0.02;
    // Force P along −y at x = e. By symmetry the centre lies on the x axis at −c; each force R is square to its radius:
    // vertical part 2 R c/ρ = P, moment about the origin P e = 2 R s²/ρ, so c = s²/e and ρ = √(c² + s²).
    const c = (s * s) / e;
    const found = slipOfGroup(pair, { force: [0, -1], at: [e, 0] });
    expect(found.upper / ((2000 * c) / Math.hypot(c, s))).toBeCloseTo(1, 8);
    expect(found.lower / found.upper).toBeCloseTo(1, 7);
    expect(found.centre?.[0]).toBeCloseTo(-c, 7);
    expect(found.centre?.[1]).toBeCloseTo(0, 7);
  });

  test("the slip load is never below what elastic shares allow", () => {
    const random = randomNumbers(9);
    for (let k = 0; k < 20; k++) {
      const fasteners = Array.from({ length: 3 + (k % 4) }, () => ({ at: [random(), random()] as const, slip: 800 }));
      const load = { force: [random() - 0.5, random() - 0.5] as const, at: [2 * random(), 2 * random()] as const };
      const worst = Math.max(...elasticGroup(fasteners, load).forces.map(([x, y]) => Math.hypot(x, y)));
      const found = slipOfGroup(fasteners, load);
      expect(found.upper).toBeGreaterThanOrEqual((800 / worst) * (1 - 1e-9));
      expect(found.lower).toBeLessThanOrEqual(found.upper * (1 + 1e-12));
      expect(found.upper - found.lower).toBeLessThan(1e-3 * found.upper);
    }
  });
});
