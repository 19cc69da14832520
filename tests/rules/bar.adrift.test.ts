import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/bar.adrift.ts";
import { barOf, kitItem, tee } from "./base-frames.ts";

const stray = { id: "stray", profile: "40x40-8", from: [0, 300, 0], to: [0, 300, 500] } as const;

it("bar.adrift: bars that nothing fastens to the rest", () => {
  const wrong = proveRule(rule, tee(), [
    {
      title: "a bar by itself",
      edit: (file) => {
        file.bars.push({ ...stray, from: [0, 300, 0], to: [0, 300, 500] });
      },
      finds: [{ at: "stray", key: "alone" }],
    },
    {
      title: "a pair fastened to each other only",
      edit: (file) => {
        file.bars.push(
          { id: "far-post", profile: "40x40-8", from: [0, 300, 0], to: [0, 300, 1000] },
          { id: "far-rail", profile: "40x40-8", from: [0, 300, 500], to: [600, 300, 500] },
          { id: "spare", profile: "40x40-8", from: [0, 0, 700], to: [600, 0, 700] },
        );
        file.joints?.push({ bars: ["far-rail", "spare"], ends: "from", by: "corner" });
      },
      finds: [{ at: "far-post", key: "adrift" }],
    },
    {
      // A screw beside its slot has nothing to bite on.
      title: "a bracket beside the slot",
      edit: (file) => {
        kitItem(file).shift = 5;
      },
      finds: [
        { at: "post", key: "unheld" },
        { at: "rail", key: "unheld" },
      ],
    },
    {
      title: "one bar alone is a whole frame",
      edit: (file) => {
        file.bars = [barOf(file, "post")];
        file.joints = [];
      },
      finds: [],
    },
    {
      title: "held by a plate instead",
      edit: (file) => {
        file.joints = [];
        file.fastenings = [{ part: "plate-T-40", on: "+y", at: [0, 20, 500], turn: 90, holds: ["post", "rail"] }];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
