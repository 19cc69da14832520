import { describe, expect, test } from "vitest";
import { evaluate, signChanges } from "../../src/mechanics/polynomial.ts";
import { randomNumbers } from "./random-frame.ts";

function fromRoots(roots: readonly number[]): Float64Array {
  let c = [1];
  for (const r of roots) {
    const next = new Array<number>(c.length + 1).fill(0);
    c.forEach((value, i) => {
      next[i + 1] = (next[i + 1] ?? 0) + value;
      next[i] = (next[i] ?? 0) - r * value;
    });
    c = next;
  }
  return Float64Array.from(c);
}

describe("roots of polynomials", () => {
  test.each([1, 2, 3, 4, 5, 6])("the simple roots inside come back, seed %i", (seed) => {
    const random = randomNumbers(seed);
    for (let degree = 1; degree <= 9; degree++) {
      const roots = Array.from({ length: degree }, (_, i) => (i + 0.2 + 0.6 * random()) / degree - 0.15);
      const found = signChanges(fromRoots(roots), 0, 0.7);
      const inside = roots.filter((r) => r > 0 && r < 0.7);
      expect(found).toHaveLength(inside.length);
      found.forEach((root, i) => {
        expect(root).toBeCloseTo(inside[i] ?? Number.NaN, 9);
      });
    }
  });

  test("a touching root is no change of sign, a triple one is", () => {
    expect(signChanges(fromRoots([0.5, 0.5, 2, 3]), 0, 1)).toEqual([]);
    const [root = Number.NaN, ...rest] = signChanges(fromRoots([0.4, 0.4, 0.4, 3]), 0, 1);
    expect(rest).toEqual([]);
    expect(root).toBeCloseTo(0.4, 4);
  });

  test("roots at the ends do not count, one at the middle counts once", () => {
    expect(signChanges(fromRoots([0, 1, 0.5]), 0, 1)).toEqual([0.5]);
    expect(signChanges(fromRoots([0, 0.25, 0.5, 0.75, 1]), 0, 1)).toEqual([0.25, 0.5, 0.75]);
  });

  test("values follow Horner's scheme", () => {
    expect(evaluate(Float64Array.of(9, 1, 2, 3), 1, 2, 2)).toBe(17);
  });
});
