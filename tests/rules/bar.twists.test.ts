import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/bar.twists.ts";
import { barData, barOf, gantry, load } from "./gantry.ts";

const L = 1;
const ARM = 0.02;
const { section, G } = barData("40x40-8");
const DEGREE = Math.PI / 180;

/** The force, N, on the outer face that winds each half of the beam by `angle`: T/2 over L/2, T = F × 20 mm (Saint-Venant, TL/GJ). */
const forceFor = (angle: number): number => (angle * 4 * G * section.J) / (L * ARM);

it("bar.twists: TL/GJ of a beam loaded on its face", () => {
  const wrong = proveRule(rule, gantry(), [
    { title: "on the axis", edit: (file) => load(file, { force: forceFor(DEGREE) }), finds: [] },
    {
      title: "just within",
      edit: (file) => load(file, { force: forceFor(0.99 * DEGREE), face: "outer" }),
      finds: [],
    },
    {
      title: "just beyond",
      edit: (file) => load(file, { force: forceFor(1.01 * DEGREE), face: "outer" }),
      finds: ["front", "back"].map((at) => ({ at, key: "twists", measured: 1.01 * DEGREE, within: 1e-5 })),
    },
    {
      title: "one bar is held to less",
      edit: (file) => {
        load(file, { force: forceFor(0.9 * DEGREE), face: "outer" });
        barOf(file, "front").criteria = { twist: "0.5°" };
      },
      finds: [{ at: "front", key: "twists", measured: 0.9 * DEGREE, within: 1e-5 }],
    },
  ]);
  expect(wrong).toEqual([]);
});
