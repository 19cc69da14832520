import { expect, it } from "vitest";
import type { Bound } from "../../src/facts/joint-stiffness.ts";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/door.sags.ts";
import { dropByHand, hungLeaf, type Leaf } from "./hung-leaf.ts";

/** From the hinge line to the farthest corner of the leaf, m: 462 mm along it, and half the thickness of its bars across. */
const REACH = Math.hypot(0.462, 0.02);
/** What is worked by hand leaves out shear and the corners' shift. */
const WITHIN = 0.02;

/** Opened by a degree the leaf hangs as it does shut, which is what is worked by hand. */
function hung(leaf: Leaf = {}, opens = 1): FrameFile {
  const file = hungLeaf(leaf);
  for (const door of file.doors ?? []) door.swing = [0, opens];
  return file;
}

const hangs =
  (leaf: Leaf, opens?: number) =>
  (file: FrameFile): void => {
    Object.assign(file, hung(leaf, opens));
  };

/** kg on the free stile with which the corner comes down this far, typical joints, by hand: the drop is a straight line in it. */
function handleFor(drop: number): number {
  const [none, one] = [dropByHand("typical").all, dropByHand("typical", { handle: 1 }).all];
  return (drop - none) / (one - none);
}

/** A bar this far under the stiles, m, that the post alone holds. */
const sill = (gap: number) => (file: FrameFile) => {
  const z = 200 - 20 - 1000 * gap;
  file.bars.push({ id: "sill", profile: "40x40-8", from: [0, 0, z], to: [504, 0, z] });
  file.joints?.push({ bars: ["sill"], ends: "from", by: "corner" });
};

/** What the farthest corner comes down; with soft joints where only those go beyond the limit. */
const at = (key: "sags" | "drags" | "floor", bound: Bound, leaf: Leaf = {}, opening?: "shut" | "wide open") => [
  { at: "door", key, measured: dropByHand(bound, leaf, opening).all, within: WITHIN },
];

it("door.sags: racking by slope-deflection, post and hinges by beam formulas, play by the lever", () => {
  const limit = REACH / 200;
  const usual = dropByHand("typical").all;
  const within = { handle: handleFor(0.95 * limit) };
  const beyond = { handle: handleFor(1.05 * limit) };
  const grounded = 1000 * dropByHand("typical", { low: 1 }).all;
  const slender: Leaf = { post: "40x80-8", handle: 8 };
  const wide = dropByHand("typical", slender, "wide open").all;
  const wrong = proveRule(rule, hung(), [
    {
      title: "a lock with which soft joints alone go beyond span / 200",
      edit: hangs(within),
      finds: at("sags", "soft", within),
    },
    { title: "a lock with which all but stiff joints do", edit: hangs(beyond), finds: at("sags", "typical", beyond) },
    {
      title: "a limit of the frame's own, just kept",
      edit: (file) => {
        file.criteria = { "door-drop": 1000 * 1.05 * usual };
      },
      finds: at("sags", "soft"),
    },
    {
      title: "a limit of the frame's own, just missed",
      edit: (file) => {
        file.criteria = { "door-drop": 1000 * 0.95 * usual };
      },
      finds: at("sags", "typical"),
    },
    {
      title: "a slender post, bent about its weak axis when the door stands open",
      edit: (file) => {
        hangs(slender, 90)(file);
        file.criteria = { "door-drop": 1000 * 0.97 * wide };
      },
      finds: at("sags", "typical", slender, "wide open"),
    },
    { title: "a sill 2 mm below", edit: sill(2e-3), finds: [] },
    { title: "a sill just low enough", edit: sill(1.05 * usual), finds: at("drags", "soft") },
    { title: "a sill just too high", edit: sill(0.95 * usual), finds: at("drags", "typical") },
    { title: "a sill it lies on as drawn", edit: sill(0), finds: at("drags", "typical") },
    {
      title: "the floor just far enough below",
      edit: hangs({ low: 1.05 * grounded }),
      finds: at("floor", "soft", { low: 1.05 * grounded }),
    },
    {
      title: "the floor just too near",
      edit: hangs({ low: 0.95 * grounded }),
      finds: at("floor", "typical", { low: 0.95 * grounded }),
    },
    {
      title: "a flap does not hang from one side",
      edit: (file) => {
        hangs(beyond)(file);
        for (const door of file.doors ?? []) door.axis = "+x";
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
