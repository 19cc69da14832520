import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/build.at-height.ts";
import { standingBox } from "../facts/build-frames.ts";

/** Posts so high, with rails 100 mm under their tops, and one group that keeps the flat frames apart. */
const grouped = (height: number, parts: [string, ...string[]]) => (file: FrameFile) => {
  Object.assign(file, standingBox(height), { groups: [{ id: "piece", parts }] });
};

// Screws of the rails' end fasteners are driven from above: 20 mm over the rails' middle lines.
it("build.at-height: screws of a flat frame that a group keeps off the bench (common practice)", () => {
  const wrong = proveRule(rule, standingBox(2000), [
    { title: "flat frames on the bench", edit: () => {}, finds: [] },
    {
      title: "high, but both posts are in the group",
      edit: grouped(2000, ["post-1", "post-2", "front-low", "front-high"]),
      finds: [],
    },
    {
      title: "the low ring is one group, so that the posts' high rails are fixed standing",
      edit: grouped(2000, ["front-low", "back-low", "left-low", "right-low"]),
      finds: [{ at: "frame", key: "high", measured: 1.92 }],
    },
    {
      title: "the same within reach",
      edit: grouped(1480, ["front-low", "back-low", "left-low", "right-low"]),
      finds: [],
    },
    {
      title: "the same just beyond reach",
      edit: grouped(1481, ["front-low", "back-low", "left-low", "right-low"]),
      finds: [{ at: "frame", key: "high", measured: 1.401 }],
    },
    {
      title: "where more height is allowed",
      edit: (file) => {
        grouped(1481, ["front-low", "back-low", "left-low", "right-low"])(file);
        file.criteria = { "work-height": "1402 mm" };
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
