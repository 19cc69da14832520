import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/joint.unclamped.ts";
import { armPull, arms, forceOnArm, hang } from "./arm.ts";
import { forceFor, OWN } from "./hung-rails.ts";

/** Preload of an M8 at 20 N·m after settling, N: 0.85 × 20 / (0.2 × 0.008). */
const PRELOAD = 10625;

const both = (use: number) =>
  ["arm-1.from", "arm-2.from"].map((at) => ({ at, key: "open", measured: use, within: 0.005 }));

it("joint.unclamped: an arm on one bracket pulls its screw off the leg, statics by hand", () => {
  const base = forceOnArm(0.87 * PRELOAD);
  expect(armPull(base)).toBeCloseTo(0.87 * PRELOAD, 6);
  const wrong = proveRule(rule, arms(base), [
    {
      title: "a heavier load",
      edit: (file) => hang(file, forceOnArm(0.93 * PRELOAD)),
      finds: both(0.93),
    },
    {
      title: "a bracket above as well",
      edit: (file) => {
        hang(file, forceOnArm(0.93 * PRELOAD));
        file.kits?.arm?.push({ connector: "gusset-bracket-40", on: "above", torque: "20 N·m" });
      },
      finds: [],
    },
    {
      title:
        "rails under their brackets by allowable stress, safety factor 2: pulled straight, loads at their own size",
      edit: (file) => {
        const item = file.kits?.rail?.[0];
        if (item) item.on = "above";
        const pull = (0.93 * PRELOAD) / 2;
        file.loads = [{ case: "goods", on: ["front", "back"], force: forceFor(pull, OWN), at: "middle" }];
        file.method = "allowable-stress";
        file.criteria = { "safety-factor": 2 };
      },
      finds: ["back.from", "back.to", "front.from", "front.to"].map((at) => ({
        at,
        key: "open",
        measured: 0.93 / 2,
        within: 0.005,
      })),
    },
    {
      title: "a stricter house",
      edit: (file) => {
        file.criteria = { "clamp-utilisation": 0.8 };
      },
      finds: both(0.87),
    },
  ]);
  expect(wrong).toEqual([]);
});
