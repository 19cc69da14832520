import { expect, it } from "vitest";
import type { Clamp } from "../../src/facts/clamping.ts";
import type { View } from "../../src/facts/response.ts";
import { worstSlip } from "../../src/facts/slip-use.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/joint.slips.ts";
import { barData } from "./gantry.ts";
import { forceFor, hungRails, OWN } from "./hung-rails.ts";

/*
 * One screw M8 at 20 N·m: median 0.15 × 0.85 × 20 / (0.2 × 0.008) = 1594 N. Its logarithm scatters by
 * √(ln² 2 + ln² (5/3) + ln² (1.1/0.9)) / 3.29 = 0.269, so 95 of 100 hold 1594 exp(−1.645 × 0.269) = 1024 N, the lips left out;
 * over 1.25: 819 N.
 */
const TRUSTED = 819;
const lips = 0.012;
const ends = ["back.from", "back.to", "front.from", "front.to"];

const all = (use: number) => ends.map((at) => ({ at, key: "slips", measured: use, within: lips }));

function passing(shear: number): (file: FrameFile) => void {
  return (file) => {
    file.loads = [{ case: "goods", on: ["front", "back"], force: forceFor(shear), at: "middle" }];
  };
}

function judged(criteria: NonNullable<FrameFile["criteria"]>): (file: FrameFile) => void {
  return (file) => {
    file.criteria = criteria;
  };
}

/** A bar on the inner faces of the front legs, tied to each where it crosses it: half of what it carries hangs on one screw. It turns there, so that
 * the legs lend it no thrust. */
function pinned(shear: number): (file: FrameFile) => void {
  return (file) => {
    const ends = { both: { cut: "as-drawn" as const } };
    file.bars.push({ id: "hung", profile: "40x40-8", from: [-20, 40, 900], to: [1020, 40, 900], ends });
    const pin = (id: string, leg: string, x: number) =>
      ({ id, bars: ["hung", leg], part: "side-tie-8", at: [x, 20, 900], axis: "+y" }) as const;
    file.pivots = [pin("left", "leg-1", 0), pin("right", "leg-2", 1000)] as never;
    file.loads = [{ case: "goods", on: "hung", force: (2 * shear - 1.35 * barData("40x40-8").weight * 1.04) / 1.5 }];
  };
}
/** Rated torque 0.2 × 1.5 × 5.39 kN of lips × 8 mm (docs/stock-format.md) instead of 20 N·m. */
const PINNED = (TRUSTED * 19.4) / 20;

it("joint.slips: a rail of 0.77 kN an end on one bracket uses 0.94 of it (0.92 by Monte Carlo, calculated)", () => {
  const wrong = proveRule(rule, hungRails(forceFor(770)), [
    { title: "0.84 kN an end", edit: passing(840), finds: all(840 / TRUSTED) },
    { title: "smoother faces", edit: judged({ "joint-friction": 0.14 }), finds: all((770 / TRUSTED) * (0.15 / 0.14)) },
    { title: "a larger factor", edit: judged({ "slip-factor": 1.4 }), finds: all(((770 / TRUSTED) * 1.4) / 1.25) },
    {
      title: "by allowable stress, safety factor 2: half as much, loads at their own size",
      edit: (file) => {
        file.loads = [{ case: "goods", on: ["front", "back"], force: forceFor(840 / 2, OWN), at: "middle" }];
        file.method = "allowable-stress";
        file.criteria = { "safety-factor": 2 };
      },
      finds: all(840 / TRUSTED),
    },
    { title: "a stricter house", edit: judged({ "slip-utilisation": 0.9 }), finds: all(770 / TRUSTED) },
    {
      title: "a bar of 0.83 kN an end on ties where it crosses the legs",
      edit: pinned(830),
      finds: ["left", "right"].map((at) => ({ at, key: "slips", measured: 830 / PINNED, within: 0.02 })),
    },
    { title: "a bar of 0.75 kN an end on such ties", edit: pinned(750), finds: [] },
    {
      title: "two brackets, 0.84 kN an end",
      edit: (file) => {
        passing(840)(file);
        file.kits?.rail?.push({ connector: "inside-bracket-40", on: "above", torque: "20 N·m" });
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});

it("gives a share that can be read where a pull takes all of a clamp: a hundredth counts as left", () => {
  const clamp = { preload: 1000, testedSlip: 800 } as Clamp;
  const view = { combination: { kind: "service" } } as View;
  const use = (pull: number): number =>
    worstSlip({ clamps: [{ clamp, shear: 400, pull }] }, { value: 0.15, factor: 1, divided: 1.25 }, view).use;
  // 1 − 0.8 F_t/F_p (EN 1993-1-8, 3.9.2(1)): 0.6 left at half the preload.
  expect(use(500)).toBeCloseTo(400 / (800 * 0.6), 9);
  expect(use(5000)).toBeCloseTo(400 / (800 * 0.01), 9);
});
