import { describe, expect, it } from "vitest";
import type { Criterion } from "../../src/criteria/criterion.ts";
import { readLimit, readStandard } from "../../src/criteria/read-limit.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";

const criteria: ReadonlyMap<string, Criterion> = new Map(
  builtInRules.flatMap((rule) => Object.values(rule.criteria).map((one) => [one.name, one] as const)),
);

function read(name: string, written: number | string, system: "mm-N-kg" | "in-lbf-lb" = "mm-N-kg") {
  const criterion = criteria.get(name);
  if (!criterion) throw new Error(`no criterion ${name}`);
  return readLimit(written, criterion, system);
}

describe("the range of a criterion", () => {
  it.each([...criteria.values()])("$name has one, and its standard value lies in it", (criterion) => {
    expect(criterion.within).toBeDefined();
    expect(readLimit(criterion.standard, criterion, "mm-N-kg")).not.toHaveProperty("found");
  });

  it("leaves no utilisation above 1.5, no factor of safety below 1 and no friction above 1", () => {
    for (const { name } of criteria.values()) {
      if (name.endsWith("-utilisation")) expect(read(name, 1.51), name).toHaveProperty("found");
      if (name.endsWith("-factor") && !name.startsWith("lift-")) expect(read(name, 0.99), name).toHaveProperty("found");
      if (name.endsWith("-friction")) expect(read(name, 1.01), name).toHaveProperty("found");
    }
  });

  it.each([
    ["slip-factor", 0],
    ["slip-factor", -1],
    ["joint-friction", 5],
    ["slip-utilisation", 100],
    ["slip-utilisation", 0],
    ["sag", "1e99 m"],
    ["sag", -1],
    ["sag", "0 mm"],
    ["tip-tilt", "0°"],
    ["braked-casters", 0],
    ["sag", "span / 0"],
    ["sag", "span / 1"],
    ["sag", "span / -5"],
    ["sag", "span / 1e9"],
    ["sag", "span"],
    ["sag", "span / 300, at least 1e9 m"],
    ["sag", "span / 300, at least 1 kg"],
  ])("refuses %s: %s", (name, written) => {
    expect(read(name, written)).toHaveProperty("found");
  });

  it("is told with its ends, in the units of the file", () => {
    expect(read("sag", "1e99 m")).toEqual({ found: '"1e99 m"', expected: "a length from 0.1 mm to 100 mm" });
    expect(read("sag", "100 in", "in-lbf-lb")).toMatchObject({ expected: "a length from 0.004 in to 3.937 in" });
    expect(read("slip-utilisation", 100)).toEqual({ found: "100", expected: "a ratio from 0.05 to 1.5" });
    expect(read("braked-casters", 0)).toMatchObject({ expected: "a whole number from 1 to 8" });
  });

  it("is anything above nought where a team's criterion states none", () => {
    const own = { name: "shortest-bar", quantity: "length", standard: "80 mm" } as const;
    expect(readLimit("800 mm", own, "mm-N-kg")).toEqual({ fixed: 0.8 });
    expect(readLimit("0 mm", own, "mm-N-kg")).toMatchObject({ expected: "a length above 0 and up to 30000 mm" });
    expect(readLimit("1e99 m", own, "mm-N-kg")).toHaveProperty("found");
    const none = { name: "spare", quantity: "count", standard: "0" } as const;
    expect([readStandard(none), readLimit(0, none, "mm-N-kg")]).toMatchObject([{ fixed: 0 }, { found: "0" }]);
    const least = { name: "hardness", quantity: "stress", standard: "80 MPa" } as const;
    expect(readLimit(0, least, "mm-N-kg")).toMatchObject({ expected: "a stress above 0" });
  });
});

describe("a share of a span", () => {
  it("is read where the standard value is one, with its floor", () => {
    expect(read("sag", "span / 500")).toEqual({ shareOf: 500, atLeast: 0 });
    expect(read("sag", "span/250 at least 2 mm")).toEqual({ shareOf: 250, atLeast: 0.002 });
  });

  it("is refused for a criterion that has no span", () => {
    expect(read("joint-gap", "span / 300")).toEqual({
      found: '"span / 300", but it has no span',
      expected: "a length from 0.05 mm to 5 mm",
      mend: 'give a length, like "0.5 mm"',
    });
    expect(read("slip-factor", "span / 300")).toMatchObject({ mend: 'give a ratio, like "1.25"' });
  });
});
