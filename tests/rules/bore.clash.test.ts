import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/bore.clash.ts";
import { barOf } from "./base-frames.ts";

/** Two rails held by end screws in neighbouring faces of a post; the access holes, 7 mm wide, cross its middle at 500 and 500 + d mm. */
function base(): FrameFile {
  return {
    format: 1,
    title: "two end screws in a post",
    units: "mm-N-kg",
    bars: [
      { id: "post", profile: "40x40-8", from: [0, 0, 0], to: [0, 0, 1000] },
      { id: "east", profile: "40x40-8", from: [0, 0, 500], to: [400, 0, 500] },
      { id: "north", profile: "40x40-8", from: [0, 0, 600], to: [0, 400, 600] },
    ],
    kits: { screw: [{ connector: "end-screw-8" }] },
    joints: [{ bars: ["east", "north"], ends: "from", by: "screw" }],
  };
}

function higher(d: number): (file: FrameFile) => void {
  return (file) => {
    const north = barOf(file, "north");
    north.from = [0, 0, 500 + d];
    north.to = [0, 400, 500 + d];
  };
}

it("bore.clash: metal between holes that cross inside a bar", () => {
  const wrong = proveRule(rule, base(), [
    // Middles d apart, two radii of 3.5 mm: d − 7 mm of metal.
    { title: "just apart", edit: higher(8.1), finds: [] },
    {
      title: "just too near",
      edit: higher(7.9),
      finds: [{ at: "post", key: "clash", measured: 0.0009, within: 1e-5 }],
    },
    { title: "at one height", edit: higher(0), finds: [{ at: "post", key: "clash", measured: -0.007 }] },
    {
      title: "less metal will do in this bar",
      edit: (file) => {
        higher(7.9)(file);
        barOf(file, "post").criteria = { "hole-wall": "0.8 mm" };
      },
      finds: [],
    },
    {
      // The stem of the foot reaches 20 mm into the core bore, 6.8 mm wide; a 9 mm hole at 25 mm leaves 5 − 4.5 = 0.5 mm to its
      // flat end.
      title: "a hole near the stem of a foot",
      edit: (file) => {
        file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
        barOf(file, "post").holes = [{ at: 25, on: "+x", diameter: 9, through: true }];
      },
      finds: [{ at: "post", key: "clash", measured: 0.0005, within: 1e-6 }],
    },
  ]);
  expect(wrong).toEqual([]);
});
