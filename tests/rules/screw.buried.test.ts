import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/screw.buried.ts";
import { glazed } from "../facts/build-frames.ts";

/** The lower rail's screws are driven from above, where the panel stands. */
const inside = (file: FrameFile) => {
  file.joints = [{ bars: ["low", "high"], ends: "both", by: "above" }];
};
const shaken = (edit: (file: FrameFile) => void) => (file: FrameFile) => {
  edit(file);
  file.site = { vibration: "light" };
};

it("screw.buried: screws behind a panel where something shakes (geometry, common practice)", () => {
  const wrong = proveRule(rule, glazed(), [
    { title: "in the open", edit: shaken(() => {}), finds: [] },
    { title: "behind the panel", edit: shaken(inside), finds: [{ at: "pane", key: "buried" }] },
    { title: "where nothing shakes", edit: inside, finds: [] },
    {
      title: "locked",
      edit: (file) => {
        shaken(inside)(file);
        file.defaults = { lock: "thread-lock" };
      },
      finds: [],
    },
    {
      title: "behind a sheet that is lifted off",
      edit: (file) => {
        shaken(inside)(file);
        file.panels = [{ id: "pane", sheet: "plywood-18", held: "laid", bars: ["high"], overhang: [0, 0, 100, 100] }];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
