import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/frame.unbraced.ts";
import { portal } from "./portal.ts";

/** Soft brackets let the portals without shelf rails give 11 mm along x, of 5.6 mm allowed; along y their span is half. */
const bare = (file: FrameFile): void => {
  Object.assign(file, portal());
};

it("frame.unbraced: says so where soft brackets alone may not do (common practice)", () => {
  const wrong = proveRule(rule, portal("gusset-bracket-40", true), [
    {
      title: "plain brackets, no shelf rails",
      edit: bare,
      finds: [
        { at: "frame", key: "unbraced" },
        { at: "frame", key: "unbraced" },
      ],
    },
    {
      title: "plain brackets, where so much is allowed",
      edit: (file) => {
        bare(file);
        file.criteria = { sway: "span / 60" };
      },
      finds: [],
    },
    {
      title: "gusseted brackets",
      edit: (file) => {
        Object.assign(file, portal("gusset-bracket-40"));
      },
      finds: [],
    },
    {
      title: "backs of plywood, screwed closely, on two sides",
      edit: (file) => {
        bare(file);
        const back = (id: string, bars: [string, string], on: "+y" | "+x") => ({
          id,
          sheet: "plywood-12",
          held: "on-face" as const,
          bars,
          on,
          screws: { pitch: 250 },
        });
        file.panels = [back("back", ["leg-3", "leg-4"], "+y"), back("side", ["leg-2", "leg-3"], "+x")];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
