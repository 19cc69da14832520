import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/build.deadlock.ts";
import { glazed, ladder } from "../facts/build-frames.ts";
import { barOf } from "./base-frames.ts";

/** Two rails this far apart whose screws look at each other. */
const facing = ladder({ low: { z: 300, on: "above" }, high: { z: 400, on: "below" } });
const apart = (mm: number) => (file: FrameFile) => {
  const high = barOf(file, "high");
  high.from = [0, 0, 300 + mm];
  high.to = [600, 0, 300 + mm];
};

/** Put round a panel in a group of its own. */
const grouped =
  (parts: [string, ...string[]], built = false) =>
  (file: FrameFile) => {
    Object.assign(file, glazed(), { groups: [{ id: "ring", parts, built }] });
  };

it("build.deadlock: two rails that cover each other's screws, a group that leaves a panel no way in (geometry)", () => {
  const wrong = proveRule(rule, facing, [
    // The short arm of a 6 mm key is 38 mm long (ISO 2936).
    { title: "room for the key", edit: apart(40 + 38), finds: [] },
    { title: "no room for the key", edit: apart(40 + 37), finds: [{ at: "low", key: "ring" }] },
    {
      title: "the screws of one look away",
      edit: (file) => {
        apart(40 + 37)(file);
        file.joints = [{ bars: ["low", "high"], ends: "both", by: "above" }];
      },
      finds: [],
    },
    // Common practice: the panel goes in before the last bar.
    { title: "open at the top", edit: grouped(["post-1", "post-2", "low"]), finds: [] },
    // By the drawing: only a rail leads from post to post.
    { title: "two posts alone", edit: grouped(["post-1", "post-2"]), finds: [{ at: "ring", key: "apart" }] },
    {
      title: "two posts alone that come built",
      edit: grouped(["post-1", "post-2"], true),
      finds: [{ at: "ring", key: "apart" }],
    },
    { title: "a post and a rail", edit: grouped(["post-1", "low"]), finds: [] },
    { title: "closed", edit: grouped(["post-1", "post-2", "low", "high"]), finds: [{ at: "ring", key: "group" }] },
    {
      title: "closed, and comes built",
      edit: grouped(["post-1", "post-2", "low", "high"], true),
      finds: [{ at: "ring", key: "built" }],
    },
    {
      title: "comes built with the panel in it",
      edit: grouped(["post-1", "post-2", "low", "high", "pane"], true),
      finds: [],
    },
    { title: "closed with the panel in it", edit: grouped(["post-1", "post-2", "low", "high", "pane"]), finds: [] },
  ]);
  expect(wrong).toEqual([]);
});
