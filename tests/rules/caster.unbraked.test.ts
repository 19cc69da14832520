import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/caster.unbraked.ts";
import { table } from "./table.ts";

const LEGS = ["leg-1", "leg-2", "leg-3", "leg-4"] as const;

/** On four casters, so many of them with a brake in use, pushed sideways. */
const rolling = (braked: number) => (file: FrameFile) => {
  file.stands = [
    ...(braked > 0
      ? [{ part: "caster-75-plate-braked", bars: LEGS.slice(0, braked) as unknown as [string], brake: true }]
      : []),
    { part: "caster-75-plate", bars: LEGS.slice(braked) as unknown as [string] },
  ];
  file.loads = [{ case: "push", on: "front", force: 150, direction: "+y" }];
};

it("caster.unbraked: a frame on wheels that something moves has two brakes (common practice)", () => {
  const wrong = proveRule(rule, table(), [
    { title: "two brakes", edit: rolling(2), finds: [] },
    { title: "one brake", edit: rolling(1), finds: [{ at: "frame", key: "rolls", measured: 1 }] },
    { title: "no brake", edit: rolling(0), finds: [{ at: "frame", key: "rolls", measured: 0 }] },
    {
      title: "one brake where one is enough",
      edit: (file) => {
        rolling(1)(file);
        file.criteria = { "braked-casters": 1 };
      },
      finds: [],
    },
    {
      title: "no brake, and nothing moves it",
      edit: (file) => {
        rolling(0)(file);
        file.loads = [{ case: "goods", on: "front", force: 150 }];
      },
      finds: [],
    },
    {
      title: "no brake on a slope",
      edit: (file) => {
        rolling(0)(file);
        file.loads = [{ case: "goods", on: "front", force: 150 }];
        file.floor = { slope: "1:50" };
      },
      finds: [{ at: "frame", key: "rolls", measured: 0 }],
    },
    {
      title: "two casters beside two feet",
      edit: (file) => {
        rolling(0)(file);
        file.stands = [
          { part: "caster-75-plate", bars: ["leg-1", "leg-2"] },
          { part: "foot-40-M8", bars: ["leg-3", "leg-4"] },
        ];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
