import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/bar.overstressed.ts";
import { barData, barOf, gantry, load, testedBrackets } from "./gantry.ts";
import { OWN, PARTIAL } from "./hung-rails.ts";

const L = 1;
const { section, fo, weight } = barData("40x40-8");
const W = section.elastic.yPlus;
const STUB = 0.02;

/**
 * qL²/8 over W, less the moment of the stubs; 1/200 of q acts sideways as well, a frame being out of plumb (EN 1993-1-1, 5.3.2),
 * and the square bar bends both ways alike. Strength: 1.35 of the bar's weight, 1.5 of the load (EN 1990, 6.10).
 */
function stress(line: number, [G, Q] = PARTIAL): number {
  const q = G * weight + Q * line;
  return (((q * L ** 2) / 8 - (q * STUB ** 2) / 2) / W) * (1 + 1 / 200);
}

/** N/mm */
function lineFor(wanted: number, factors = PARTIAL): number {
  return (wanted - stress(0, factors)) / (stress(1, factors) - stress(0, factors)) / 1000;
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
        title:
          "by allowable stress just within: proof strength over 1.1 × 1.5, the 1.65 of the Aluminum Design Manual (from memory)",
        edit: (file) => {
          load(file, { line: lineFor((0.99 * fo) / 1.65, OWN) });
          file.method = "allowable-stress";
        },
        finds: [],
      },
      {
        title: "by allowable stress just beyond",
        edit: (file) => {
          load(file, { line: lineFor((1.01 * fo) / 1.65, OWN) });
          file.method = "allowable-stress";
        },
        finds: both((1.01 * fo) / 1.65),
      },
      {
        title: "by allowable stress with a safety factor of its own",
        edit: (file) => {
          load(file, { line: lineFor((1.01 * fo) / 2.2, OWN) });
          file.method = "allowable-stress";
          file.criteria = { "safety-factor": 2 };
        },
        finds: both((1.01 * fo) / 2.2),
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
