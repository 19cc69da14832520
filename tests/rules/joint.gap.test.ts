import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/joint.gap.ts";
import { barOf, railFrom, tee } from "./base-frames.ts";

/** A second bar under the rail, its face so far below the rail's, mm, tied to it. */
const twin =
  (gap: number) =>
  (file: FrameFile): void => {
    file.bars.push({ id: "twin", profile: "40x40-8", from: [100, 0, 460 - gap], to: [600, 0, 460 - gap] });
    file.ties = [{ id: "tie", bars: ["rail", "twin"], part: "side-tie-8", at: [300, 500] }];
  };

/** A slanting bar beside the rail, its face so far off the rail's, mm, tied to it where it crosses, about this axis. */
const crossed =
  (gap: number, axis: "+y" | "+z" = "+y") =>
  (file: FrameFile): void => {
    file.bars.push({ id: "brace", profile: "40x40-8", from: [200, 40 + gap, 400], to: [400, 40 + gap, 600] });
    file.pivots = [{ id: "pin", bars: ["brace", "rail"], part: "side-tie-8", at: [300, 20, 500], axis }];
  };

/* The post's face stands at x = 20 mm. */
it("joint.gap: how far a fastened end stands off the face it is fastened to", () => {
  const wrong = proveRule(rule, tee(), [
    { title: "a saw cut short", edit: railFrom(20.4), finds: [] },
    { title: "just too short", edit: railFrom(20.6), finds: [{ at: "rail.from", key: "gap", measured: 0.0006 }] },
    { title: "drawn into the post", edit: railFrom(19), finds: [] },
    { title: "nowhere near", edit: railFrom(45), finds: [{ at: "rail.from", key: "nothing" }] },
    {
      title: "a wider gap allowed for this bar",
      edit: (file) => {
        railFrom(20.6)(file);
        barOf(file, "rail").criteria = { "joint-gap": "0.7 mm" };
      },
      finds: [],
    },
    {
      // Cut 1.8° out of square about the middle of the end: open at one edge by 20 mm x tan 1.8°.
      title: "cut out of square",
      edit: (file) => {
        const rail = barOf(file, "rail");
        rail.from = [20, 0, 500];
        rail.ends = { from: { angle: 1.8, about: "+y" } };
      },
      finds: [{ at: "rail.from", key: "gap", measured: 0.02 * Math.tan((1.8 * Math.PI) / 180), within: 1e-3 }],
    },
    { title: "tied bars laid on each other", edit: twin(0), finds: [] },
    { title: "a hair between tied bars", edit: twin(0.4), finds: [] },
    { title: "too much between them", edit: twin(0.6), finds: [{ at: "tie", key: "tied", measured: 0.0006 }] },
    { title: "tied across the room", edit: twin(60), finds: [{ at: "tie", key: "untied" }] },
    { title: "a brace tied where it crosses the rail", edit: crossed(0.4), finds: [] },
    { title: "too far off it", edit: crossed(0.6), finds: [{ at: "pin", key: "tied", measured: 0.0006 }] },
    { title: "tied about an axis along the faces", edit: crossed(0, "+z"), finds: [{ at: "pin", key: "untied" }] },
    {
      // 500 mm long and lower by 1 mm at the far end, so 0.4 mm at the first screw and 0.8 at the second.
      title: "tied bars that part along their way",
      edit: (file) => {
        twin(0)(file);
        barOf(file, "twin").to = [600, 0, 459];
      },
      finds: [{ at: "tie", key: "tied", measured: 0.0008, within: 1e-4 }],
    },
  ]);
  expect(wrong).toEqual([]);
});
