import { describe, expect, it } from "vitest";
import type { Problem } from "../../src/model/problem.ts";
import { alikeProblems, othersToo } from "../../src/report/alike-problems.ts";

function problem(line: number, found: string, code = "doubtful-value"): Problem {
  const place = { file: "rack.frame.json", pointer: `/bars/${line}`, line, column: 1, endLine: line, endColumn: 2 };
  return { code, weight: "warning", place, found, expected: "a length up to 30 m" };
}

describe("problems of a file that read alike", () => {
  it("are one entry for doubts about values of one kind, with the lines of the others", () => {
    const told = alikeProblems([
      problem(3, "coordinate 31 m"),
      problem(4, "coordinate 32.5 m"),
      problem(4, "coordinate 33 m"),
      problem(6, "coordinate -34 m"),
      problem(7, "bar length 35 m"),
    ]);
    expect(told.map(({ first }) => first.found)).toEqual(["coordinate 31 m", "bar length 35 m"]);
    expect(told.map(othersToo)).toEqual([" and lines 4 and 6", ""]);
  });

  it("stay apart where they are anything else: what was found names the part then", () => {
    const told = alikeProblems([problem(3, "bar 1 unknown", "unknown"), problem(4, "bar 2 unknown", "unknown")]);
    expect(told).toHaveLength(2);
  });
});
