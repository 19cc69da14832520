import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/bar.overstressed.ts";
import { barData, barOf, gantry, load, testedBrackets } from "./gantry.ts";

const L = 1;
const { section, fo, weight } = barData("40x40-8");
const W = section.elastic.yPlus;
const STUB = 0.02;

/**
 * qL²/8 over W, less the moment of the stubs; 1/200 of q acts sideways as well, a frame being out of plumb (EN 1993-1-1, 5.3.2),
 * and the square bar bends both ways alike. Strength: 1.35 of the bar's weight, 1.5 of the load (EN 1990, 6.10).
 */
function stress(line: number): number {
  const q = 1.35 * weight + 1.5 * line;
  return (((q * L ** 2) / 8 - (q * STUB ** 2) / 2) / W) * (1 + 1 / 200);
}

/** N/mm */
function lineFor(wanted: number): number {
  return (wanted - stress(0)) / (stress(1) - stress(0)) / 1000;
}

it("bar.overstressed: M/W of a simply supported beam against the proof strength over 1.1", () => {
  const limit = fo / 1.1;
  const both = (measured: number) => ["front", "back"].map((at) => ({ at, key: "over", measured, within: 2e-3 }));
  const wrong = proveRule(
    rule,
    gantry(),
    [
      { title: "just within", edit: (file) => load(file, { line: lineFor(0.99 * limit) }), finds: [] },
      {
        title: "just beyond",
        edit: (file) => load(file, { line: lineFor(1.01 * limit) }),
        finds: both(1.01 * limit),
      },
      {
        title: "a greater factor on one bar",
        edit: (file) => {
          load(file, { line: lineFor(0.95 * limit) });
          barOf(file, "back").criteria = { "member-factor": 1.25 };
        },
        finds: [{ at: "back", key: "over", measured: 0.95 * limit, within: 2e-3 }],
      },
    ],
    [testedBrackets(40, 1)],
  );
  expect(wrong).toEqual([]);
});
