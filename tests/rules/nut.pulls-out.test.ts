import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/nut.pulls-out.ts";
import { arms, forceOnArm, hang } from "./arm.ts";
import { barData } from "./gantry.ts";
import { forceFor, OWN } from "./hung-rails.ts";

const { lipRating } = barData("40x40-8").profile;
const both = (pull: number) =>
  ["arm-1.from/1/b1/nut", "arm-2.from/1/b1/nut"].map((at) => ({ at, key: "pulled", measured: pull, within: 0.005 }));

it("nut.pulls-out: nuts of arms and of rails that hang from brackets above them", () => {
  const wrong = proveRule(rule, arms(forceOnArm(0.95 * lipRating)), [
    {
      title: "a heavier load",
      edit: (file) => hang(file, forceOnArm(1.05 * lipRating)),
      finds: both(1.05 * lipRating),
    },
    {
      title: "a bracket above as well",
      edit: (file) => {
        hang(file, forceOnArm(1.05 * lipRating));
        file.kits?.arm?.push({ connector: "gusset-bracket-40", on: "above", torque: "20 N·m" });
      },
      finds: [],
    },
    {
      title: "a stricter house",
      edit: (file) => {
        file.criteria = { "lip-utilisation": 0.9 };
      },
      finds: both(0.95 * lipRating),
    },
    {
      // The leg over each end is pulled at its corner and heels 18 mm past the screw: × (22 + 18) / 18.
      title: "rails under their brackets by allowable stress, safety factor 2",
      edit: (file) => {
        const item = file.kits?.rail?.[0];
        if (item) item.on = "above";
        const shear = (((1.05 * lipRating) / 2) * 18) / 40;
        file.loads = [{ case: "goods", on: ["front", "back"], force: forceFor(shear, OWN), at: "middle" }];
        file.method = "allowable-stress";
        file.criteria = { "safety-factor": 2 };
      },
      finds: ["back.from", "back.to", "front.from", "front.to"].map((at) => ({
        at: `${at}/1/a1/nut`,
        key: "pulled",
        measured: (1.05 * lipRating) / 2,
        within: 0.005,
      })),
    },
    {
      // Each end passes 3.7 kN; the leg over it is pulled at its corner and heels 18 mm past the screw: × (22 + 18) / 18 = 8.22 kN.
      title: "rails under their brackets",
      edit: (file) => {
        const item = file.kits?.rail?.[0];
        if (item) item.on = "above";
        file.loads = [{ case: "goods", on: ["front", "back"], force: forceFor(3700), at: "middle" }];
      },
      finds: ["back.from", "back.to", "front.from", "front.to"].map((at) => ({
        at: `${at}/1/a1/nut`,
        key: "pulled",
        measured: (3700 * 40) / 18,
        within: 0.005,
      })),
    },
  ]);
  expect(wrong).toEqual([]);
});
