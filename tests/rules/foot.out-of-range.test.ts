import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/foot.out-of-range.ts";
import { table } from "./table.ts";

/** Lower end of the first leg over the floor, mm; the foot takes 28 to 52. */
const ending = (z: number, raise?: number) => (file: FrameFile) => {
  const [leg] = file.bars;
  leg.from = [-500, -300, z];
  file.stands = [
    { part: "foot-40-M8", bars: ["leg-1"], ...(raise === undefined ? {} : { raise }) },
    { part: "foot-40-M8", bars: ["leg-2", "leg-3", "leg-4"] },
  ];
};

it("foot.out-of-range: range of the part against the drawing (geometry)", () => {
  const wrong = proveRule(rule, table(), [
    { title: "at the top of its range", edit: ending(52), finds: [] },
    { title: "a little beyond", edit: ending(54), finds: [{ at: "leg-1.foot", key: "short", measured: 0.054 }] },
    { title: "at the bottom of its range", edit: ending(28), finds: [] },
    { title: "a little below", edit: ending(26), finds: [{ at: "leg-1.foot", key: "long", measured: 0.026 }] },
    {
      title: "anchored to a ceiling",
      edit: (file) => {
        file.stands = [{ part: "foot-40-M8", bars: ["leg-1"], hold: "anchored", end: "to" }];
      },
      finds: [],
    },
    {
      title: "anchored to a wall",
      edit: (file) => {
        for (const bar of file.bars)
          if (bar.id === "leg-1") Object.assign(bar, { from: [-200, 0, 1200], to: [200, 0, 1200] });
        file.stands = [{ part: "foot-40-M8", bars: ["leg-1"], hold: "anchored", end: "to" }];
      },
      finds: [],
    },
    { title: "set within a millimetre of the drawing", edit: ending(46, 45.5), finds: [] },
    {
      title: "set elsewhere than drawn",
      edit: ending(46, 44.5),
      finds: [{ at: "leg-1.foot", key: "apart", measured: 0.0015 }],
    },
    {
      title: "set elsewhere than drawn, where that is allowed",
      edit: (file) => {
        ending(46, 44.5)(file);
        file.criteria = { "foot-gap": 2 };
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
