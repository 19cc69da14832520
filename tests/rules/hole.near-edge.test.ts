import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/hole.near-edge.ts";
import { barOf, kitItem, tee } from "./base-frames.ts";

/** With a T plate over the joint: five holes, each 19 mm from an edge of the plate. */
function base(): FrameFile {
  return {
    ...tee(),
    fastenings: [{ id: "tee", part: "plate-T-40", on: "+y", at: [0, 20, 500], turn: 90, holds: ["post", "rail"] }],
  };
}

/** Bracket on top of the rail: its screw b1 sits in the post at z = 500 + 20 + 22 = 542 mm; 1.5 x 8.2 = 12.3 mm of post are wanted above. */
function postTop(z: number): (file: FrameFile) => void {
  return (file) => {
    kitItem(file).on = "above";
    barOf(file, "post").to = [0, 0, z];
  };
}

function drilled(at: number): (file: FrameFile) => void {
  return (file) => {
    barOf(file, "rail").holes = [{ at, on: "-y", diameter: 9, through: true }];
  };
}

it("hole.near-edge: 1.5 slot openings for nuts, 1.2 d0 for holes (bolts.en.edge-M8: 10.8 mm for a 9 mm hole)", () => {
  const wrong = proveRule(rule, base(), [
    { title: "nut just far enough", edit: postTop(554.4), finds: [] },
    {
      title: "nut just too near",
      edit: postTop(554.2),
      finds: [{ at: "rail.from/1/b1", key: "nut", measured: 0.0122 }],
    },
    {
      title: "nut too near for its own bar's limit",
      edit: (file) => {
        postTop(556)(file);
        barOf(file, "post").criteria = { "nut-to-end": 1.75 };
      },
      finds: [{ at: "rail.from/1/b1", key: "nut", measured: 0.014 }],
    },
    // Counted from the cut end of the rail.
    { title: "hole just far enough", edit: drilled(10.9), finds: [] },
    { title: "hole just too near", edit: drilled(10.7), finds: [{ at: "rail", key: "hole", measured: 0.0107 }] },
    // The rail is 580 mm long as cut: 569.3 mm from one end is 10.7 mm from the other.
    {
      title: "hole just too near the other end",
      edit: drilled(569.3),
      finds: [{ at: "rail", key: "hole", measured: 0.0107 }],
    },
    {
      title: "2.1 diameters wanted: 18.9 mm",
      edit: (file) => {
        file.criteria = { "hole-to-edge": 2.1 };
      },
      finds: [],
    },
    {
      title: "2.2 diameters wanted: 19.8 mm",
      edit: (file) => {
        file.criteria = { "hole-to-edge": 2.2 };
      },
      finds: Array.from({ length: 5 }, (_, i) => ({ at: `tee/1/h${i + 1}`, key: "plate", measured: 0.019 })),
    },
  ]);
  expect(wrong).toEqual([]);
});
