import { describe, expect, test } from "vitest";
import { JSON_CASES } from "./json-cases.ts";
import { codesOf, open, parses } from "./open.ts";

describe("texts at the edges of RFC 8259", () => {
  test.each(JSON_CASES)("$about is $fate", ({ text, fate, codes = [] }) => {
    const opened = open(text);
    expect(parses(text)).toBe(fate !== "refused");
    expect(opened.document !== undefined).toBe(fate === "read");
    expect(opened.problems.some((problem) => problem.weight === "error")).toBe(fate !== "read");
    expect(codesOf(opened)).toEqual(expect.arrayContaining([...codes]));
    if (fate === "read" && codes.length === 0) expect(opened.problems).toEqual([]);
    // Plus zero for minus zero is the one place where the value is not that of JSON.parse.
    if (fate === "read" && !codes.includes("minus-zero")) expect(opened.document?.value).toEqual(JSON.parse(text));
  });

  test("there are at least 80 of them, no text twice", () => {
    expect(JSON_CASES.length).toBeGreaterThanOrEqual(80);
    expect(new Set(JSON_CASES.map((one) => one.text)).size).toBe(JSON_CASES.length);
  });

  test("minus zero is read as zero", () => {
    const value = open("-0").document?.value;
    expect(Object.is(value, 0)).toBe(true);
    expect(open('{"a": [-0.0, "-0", -0e3]}').document?.value).toEqual({ a: [0, "-0", 0] });
  });
});
