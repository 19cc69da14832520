import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/bar.sags.ts";
import { barData, barOf, gantry, load } from "./gantry.ts";

const L = 1;
const { section, E, G, weight } = barData("40x40-8");
const EI = E * section.Iz;
const GA = G * section.Avy;
const STUB = 0.02;

/** Middle of a span under q N/m that runs 20 mm past both supports: beams.ss.udl with shear and the stubs' moments (Gere). */
function middleSag(q: number): number {
  return (5 * q * L ** 4) / (384 * EI) + (q * L ** 2) / (8 * GA) - ((q * STUB ** 2) / 2) * (L ** 2 / (8 * EI));
}

/** The line load, N/mm, under which the middle sags by `sag` m. */
function lineFor(sag: number): number {
  return (sag / middleSag(1) - weight) / 1000;
}

/** Tip of an overhang a: P at the tip and q everywhere (beams.overhang.tip, beams.overhang.udl; shear of both). */
function tipSag(P: number, q: number, a: number): number {
  const point = (P * a ** 2 * (L + a)) / (3 * EI) + (P * a * (1 + a / L)) / GA;
  const spread = (q * a ** 3 * (4 * L + 3 * a)) / (24 * EI) + ((q * a ** 2) / 2) * ((1 + a / L) / GA);
  const lifted = (q * L ** 3 * a) / (24 * EI);
  const stub = ((q * STUB ** 2) / 2) * ((L * a) / (6 * EI) - a / (L * GA));
  return point + spread - lifted + stub;
}

/** Spread over the whole beam so that the force at the tip does not lift it off its far feet, N/m. */
const BALLAST = 1000;

/** The force, N, under which the tip sags by `sag` m. */
function forceFor(sag: number, a: number): number {
  return (sag - tipSag(0, BALLAST + weight, a)) / (tipSag(1, 0, a) - tipSag(0, 0, a));
}

function tipLoaded(file: FrameFile, sag: number): void {
  Object.assign(file, gantry(1000, { past: 300 }));
  file.loads = [
    { case: "goods", on: ["front", "back"], line: BALLAST / 1000 },
    { case: "goods", on: ["front", "back"], force: forceFor(sag, 0.3), at: 1320 },
  ];
}

it("bar.sags: 5qL⁴/384EI + qL²/8GA between supports, Pa²(L + a)/3EI past them", () => {
  const both = (measured: number, key = "sags", within = 1e-6) =>
    ["front", "back"].map((at) => ({ at, key, measured, within }));
  const limit = L / 300;
  const wrong = proveRule(rule, gantry(), [
    {
      title: "just within span / 300",
      edit: (file) => load(file, { line: lineFor(0.995 * limit) }),
      finds: [],
    },
    {
      title: "just beyond span / 300",
      edit: (file) => load(file, { line: lineFor(1.005 * limit) }),
      finds: both(1.005 * limit),
    },
    {
      title: "an end that stands out 300 mm: twice its length / 300",
      edit: (file) => tipLoaded(file, 0.00205),
      // The joint over the near posts gives more than the far one: a hundredth more at the tip.
      finds: both(0.00205, "hangs", 0.012),
    },
    {
      title: "an end that stands out, just within",
      edit: (file) => tipLoaded(file, 0.00195),
      finds: [],
    },
    {
      // Under q on the span the ends turn by 3.2 δ/L: 1.16 mm up at a tip 120 mm out, 2 a/300 and at least 1 mm allowed down.
      title: "an end that the span beside it lifts",
      edit: (file) => {
        Object.assign(file, gantry(1000, { past: 120 }));
        load(file, { line: lineFor(0.97 * limit), part: [20, 1020] });
      },
      finds: [],
    },
    {
      title: "one bar is held to less",
      edit: (file) => {
        load(file, { line: lineFor(0.9 * limit) });
        barOf(file, "front").criteria = { sag: "span / 400" };
      },
      finds: [{ at: "front", key: "sags", measured: 0.9 * limit }],
    },
    {
      title: "a short bar may always sag a millimetre",
      edit: (file) => {
        Object.assign(file, gantry(250));
        load(file, { line: 20 });
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
