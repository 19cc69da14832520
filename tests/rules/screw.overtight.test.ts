import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/screw.overtight.ts";
import { kitItem, tee } from "./base-frames.ts";
import { barData } from "./gantry.ts";

/** Torque at which an M8 brings the lips to where they give, N·m: 0.2 × 8 mm × 1.6 ratings. */
const LIPS = 0.2 * 0.008 * 1.6 * barData("40x40-8").profile.lipRating;

function torque(value: number, more: (file: FrameFile) => void = () => undefined): (file: FrameFile) => void {
  return (file) => {
    kitItem(file).torque = value;
    more(file);
  };
}

const screws = (value: number, ids = ["rail.from/1/a1", "rail.from/1/b1"]) =>
  ids.map((at) => ({ at, key: "over", measured: value }));

it("screw.overtight: lips, screw, key and the thread in the core each set the limit", () => {
  expect(LIPS).toBeCloseTo(20.69, 2);
  const wrong = proveRule(rule, tee(), [
    { title: "just under the lips", edit: torque(20.5), finds: [] },
    { title: "over the lips", edit: torque(21), finds: screws(21) },
    {
      title: "a stricter house",
      edit: torque(20.5, (file) => {
        file.criteria = { "torque-utilisation": 0.9 };
      }),
      finds: screws(20.5),
    },
    {
      // Heavy lips give at 26 N·m; the screw takes 25.
      title: "over the screw in heavy profiles",
      edit: torque(25.5, (file) => {
        for (const bar of file.bars) bar.profile = "40x40-8-heavy";
      }),
      finds: screws(25.5),
    },
    {
      title: "as the screw takes it",
      edit: torque(25, (file) => {
        for (const bar of file.bars) bar.profile = "40x40-8-heavy";
      }),
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
