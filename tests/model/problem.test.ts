import fc from "fast-check";
import { expect, test } from "vitest";
import { compareProblems, type Problem } from "../../src/model/problem.ts";

const text = fc.constantFrom("", "a", "b", "é");
const number = fc.integer({ min: 1, max: 3 });
const problem: fc.Arbitrary<Problem> = fc.record({
  code: text,
  weight: fc.constantFrom("error" as const, "warning" as const),
  place: fc.record({ file: text, pointer: text, line: number, column: number, endLine: number, endColumn: number }),
  found: text,
  expected: text,
  mend: text,
});

test("problems have a total order: antisymmetric, transitive, zero only for equals", () => {
  fc.assert(
    fc.property(problem, problem, problem, (a, b, c) => {
      expect(Math.sign(compareProblems(a, b))).toBe(-Math.sign(compareProblems(b, a)) + 0);
      if (compareProblems(a, b) <= 0 && compareProblems(b, c) <= 0)
        expect(compareProblems(a, c)).toBeLessThanOrEqual(0);
      if (compareProblems(a, b) === 0) expect(a).toEqual(b);
    }),
    { numRuns: 2000 },
  );
});

test("place goes before weight, weight before words", () => {
  const at = (line: number) => ({ file: "a", pointer: "", line, column: 1, endLine: line, endColumn: 1 });
  const late: Problem = { code: "a", weight: "error", place: at(2), found: "", expected: "" };
  const early: Problem = { code: "b", weight: "warning", place: at(1), found: "", expected: "" };
  const graver: Problem = { ...early, code: "z", weight: "error" };
  expect([late, early, graver].sort(compareProblems)).toEqual([graver, early, late]);
});
