import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile, KitItem } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/joint.turns.ts";
import { barOf, kitItem, tee } from "./base-frames.ts";

/** A rail between two posts that a sill holds together, everything by one bracket with lugs at either end. */
function base(): FrameFile {
  const file = tee();
  file.bars.push(
    { id: "far", profile: "40x40-8", from: [600, 0, 0], to: [600, 0, 1000] },
    { id: "sill", profile: "40x40-8", from: [0, 0, 100], to: [600, 0, 100] },
  );
  file.kits = { ...file.kits, firm: [{ connector: "gusset-bracket-40", on: "above" }] };
  file.joints = [
    { bars: ["rail"], ends: "both", by: "corner" },
    { bars: ["sill"], ends: "both", by: "firm" },
  ];
  kitItem(file).connector = "gusset-bracket-40";
  return file;
}

/** The rail lies on the tops of both posts, one lone-screw bracket under it at either. */
function onTop(file: FrameFile): void {
  for (const id of ["post", "far"]) {
    const { to } = barOf(file, id);
    barOf(file, id).to = [to[0], 0, 480];
  }
  barOf(file, "rail").from = [-20, 0, 500];
  barOf(file, "rail").to = [620, 0, 500];
  file.joints = [{ bars: ["sill"], ends: "both", by: "firm" }];
  file.fastenings = [
    { id: "near", part: "inside-bracket-40", on: "+x", against: "-z", at: [20, 0, 480], holds: ["post", "rail"] },
    { id: "away", part: "inside-bracket-40", on: "-x", against: "-z", at: [580, 0, 480], holds: ["far", "rail"] },
  ];
}

function kit(...items: readonly [KitItem, ...KitItem[]]): (file: FrameFile) => void {
  return (file) => {
    file.kits = { ...file.kits, corner: [...items] };
  };
}

const single: KitItem = { connector: "inside-bracket-40", on: "below" };

it("joint.turns: rails on lone screws roll; a second screw, lugs or a second bracket hold them", () => {
  const wrong = proveRule(rule, base(), [
    // The screws in the posts lie in one line, y = 0 and z = 458 mm.
    { title: "one screw in line at either end", edit: kit(single), finds: [{ at: "rail", key: "turns" }] },
    {
      title: "the same under load",
      edit: (file) => {
        kit(single)(file);
        file.loads = [{ case: "shelf", on: "rail", force: 100 }];
      },
      finds: [{ at: "rail", key: "loaded" }],
    },
    {
      title: "load elsewhere",
      edit: (file) => {
        kit(single)(file);
        file.loads = [{ case: "shelf", on: "post", force: 100 }];
      },
      finds: [{ at: "rail", key: "turns" }],
    },
    { title: "two screws on each leg", edit: kit({ ...single, connector: "inside-bracket-40-long" }), finds: [] },
    { title: "a second bracket above", edit: kit(single, { ...single, on: "above" }), finds: [] },
    {
      // It reaches past the post, which is no wider than the rail: its screw holds nothing.
      title: "a second bracket beside the rail",
      edit: kit(single, { ...single, on: "+y" }),
      finds: [{ at: "rail", key: "turns" }],
    },
    { title: "seated on both posts", edit: onTop, finds: [] },
    {
      title: "hung a saw cut over both posts",
      edit: (file) => {
        onTop(file);
        barOf(file, "rail").from = [-20, 0, 501];
        barOf(file, "rail").to = [620, 0, 501];
      },
      finds: [{ at: "rail", key: "turns" }],
    },
    {
      title: "lone screws at one end only",
      edit: (file) => {
        file.kits = { ...file.kits, weak: [single] };
        file.joints = [
          { bars: ["rail"], ends: "from", by: "corner" },
          { bars: ["rail"], ends: "to", by: "weak" },
          { bars: ["sill"], ends: "both", by: "firm" },
        ];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
