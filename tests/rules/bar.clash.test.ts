import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/bar.clash.ts";
import { railFrom, tee } from "./base-frames.ts";

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
  ]);
  expect(wrong).toEqual([]);
});
