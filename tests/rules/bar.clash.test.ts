import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/bar.clash.ts";
import { railFrom, tee } from "./base-frames.ts";

/** A sheet 6 mm thick on the rail, which starts at the post's face: past its start, and past its sides, mm. */
const topped =
  ([over, low, high]: readonly [number, number, number]) =>
  (file: FrameFile): void => {
    file.panels = [
      { id: "top", sheet: "hpl-6", held: "laid", bars: ["rail"], on: "+z", overhang: [over, 0, low, high] },
    ];
  };

it("bar.clash: depth by which parts run into each other; touching is none", () => {
  const wrong = proveRule(rule, tee(), [
    { title: "touching", edit: railFrom(20), finds: [] },
    { title: "less than a saw cut", edit: railFrom(19.95), finds: [] },
    {
      title: "just too deep",
      edit: railFrom(19.85),
      finds: [{ at: "post", key: "clash", measured: 0.00015, within: 1e-5 }],
    },
    {
      title: "depth allowed by the frame",
      edit: (file) => {
        railFrom(19.85)(file);
        file.criteria = { "clash-depth": "0.2 mm" };
      },
      finds: [],
    },
    {
      // A sill lies under the rail, touching it at z = 480, where the bracket's leg is 5 mm thick.
      title: "a bar through a bracket",
      edit: (file) => {
        file.bars.push({ id: "sill", profile: "40x40-8", from: [50, -200, 460], to: [50, 200, 460] });
      },
      finds: [{ at: "sill", key: "clash", measured: 0.005 }],
    },
    {
      // Drawn on the same lines: 40 mm square bars would have to part by 40 mm.
      title: "a bar drawn twice",
      edit: (file) => {
        file.bars.push({ id: "double", profile: "40x40-8", from: [100, 0, 500], to: [400, 0, 500] });
      },
      finds: [{ at: "rail", key: "clash", measured: 0.04 }],
    },
    {
      title: "a sheet on the rail that ends at the post",
      edit: topped([0, 20, 20]),
      finds: [],
    },
    {
      title: "less than a saw cut into it",
      edit: topped([0.05, 20, 20]),
      finds: [],
    },
    {
      // The sheet starts at the face of the post, at x = 20, and reaches 0.15 mm past it.
      title: "a sheet just into the post",
      edit: topped([0.15, 20, 20]),
      finds: [{ at: "top", key: "sheet", measured: 0.00015, within: 1e-5 }],
    },
    {
      // From x = -40, 20 mm past the far side of the post; from y = -50 to 40, 20 mm past the near one and 40 wide: sideways it is 60 mm, too.
      title: "a post through a sheet, which rises over and under it",
      edit: topped([60, 30, 20]),
      finds: [{ at: "top", key: "sheet", measured: 0.06 }],
    },
    {
      // Notches of 41 by 41 mm, and the post, 40 wide, in one of them: 20 mm of overhang beside it and no more.
      title: "a sheet notched for the post",
      edit: (file) => {
        topped([40, 40, 0])(file);
        for (const panel of file.panels ?? []) panel.notches = [41, 41];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
