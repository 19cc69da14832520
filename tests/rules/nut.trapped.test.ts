import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/nut.trapped.ts";
import { standingBox } from "../facts/build-frames.ts";

/** The front comes built: its posts stand between two rails, so that their slots are closed. */
const front = (built: boolean) => (file: FrameFile) => {
  file.groups = [{ id: "front", parts: ["post-1", "post-2", "front-low", "front-high"], built }];
};
const ladderOn = (file: FrameFile) => {
  // Rails over and under the posts instead of between them.
  for (const [id, z] of [
    ["front-low", -20],
    ["front-high", 1020],
  ] as const) {
    const bar = file.bars.find((one) => one.id === id);
    if (!bar) throw new Error(id);
    bar.from = [-20, 0, z];
    bar.to = [620, 0, z];
  }
  file.joints = [
    { bars: ["post-1", "post-2"], ends: "both", by: "side" },
    { bars: ["left-low", "right-low", "left-high", "right-high"], ends: "both", by: "above" },
    { bars: ["back-low", "back-high"], ends: "both", by: "above" },
  ];
};
const both =
  (...edits: readonly ((file: FrameFile) => void)[]) =>
  (file: FrameFile) => {
    for (const edit of edits) edit(file);
  };

/** Spare nuts asked for in one post. */
const asked = (count: number) => (file: FrameFile) => {
  const post = file.bars.find((bar) => bar.id === "post-1");
  if (post) post.criteria = { "spare-nuts": count };
};

it("nut.trapped: nuts for a piece that comes built, and room for spare ones (geometry)", () => {
  const trapped = [
    "left-low.from/1/a1/nut",
    "right-low.from/1/a1/nut",
    "left-high.from/1/a1/nut",
    "right-high.from/1/a1/nut",
  ];
  const wrong = proveRule(rule, standingBox(1000), [
    { title: "built here", edit: both(ladderOn, front(false)), finds: [] },
    {
      title: "comes built, slots closed at both ends",
      edit: both(ladderOn, front(true)),
      finds: trapped.map((at) => ({ at, key: "trapped" })),
    },
    { title: "comes built, slots open", edit: front(true), finds: [] },
    {
      title: "drop-in nuts",
      edit: both(ladderOn, front(true), (file) => {
        file.defaults = { nut: "drop-in" };
      }),
      finds: [],
    },
    // A post 1000 mm long, two nuts of 20 mm at 112 and 912 mm in one slot: 102, 780 and 78 mm stay free, for 5 + 39 + 3 nuts.
    { title: "as many as fit", edit: asked(47), finds: [] },
    {
      title: "one more",
      edit: asked(48),
      finds: [
        { at: "post-1", key: "spare", measured: 47 },
        { at: "post-1", key: "spare", measured: 47 },
      ],
    },
  ]);
  expect(wrong).toEqual([]);
});
