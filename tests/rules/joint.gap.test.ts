import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/joint.gap.ts";
import { barOf, railFrom, tee } from "./base-frames.ts";

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
  ]);
  expect(wrong).toEqual([]);
});
