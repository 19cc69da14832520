import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { tipData } from "../../src/drawing/model3d/tip-data.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFrame } from "../../src/inspection/inspect-file.ts";
import { findingPoses } from "../../src/report/sheet/finding-poses.ts";
import { partsOf } from "../../src/report/sheet/parts.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { one } from "../facts/known.ts";

/** What the view that turns shows with the finding of one rule in the frame of its page, no other rule asked. */
function poseOf(id: string) {
  const house = { ...noSettings("2027-03-31"), rules: builtInRules.filter((rule) => rule.id === id) };
  const file = `docs/rules/${id}.fault.frame.json`;
  const { report, frame } = inspectFrame({ file, bytes: readFileSync(file), stock: [], house });
  return one(findingPoses(one(frame), partsOf(report))[0]);
}

it("opens the door as far as where it strikes", () => {
  // docs/rules/door.collides.md: 180.12° of 190°.
  expect(poseOf("door.collides").open).toEqual([expect.closeTo(180.12 / 190, 4)]);
});

it("shows the line a frame tips over, and its centre of mass over the floor", () => {
  const { tip, open } = poseOf("frame.tips");
  expect(open).toEqual([]);
  const { over, state, words } = one(tip);
  const { line, centre, below, nearest } = tipData(over, state, words);
  // Legs at y = 0 and 500 mm carry a tank that stands in their middle; docs/rules/frame.tips.md: tan 9.37° = 250 / 1514.9.
  expect(words).toBe("tips over leg-1.foot and leg-2.foot");
  expect([line[1], line[4]]).toEqual([0, 0]);
  expect([centre[1], below[1], nearest[1]]).toEqual([
    expect.closeTo(250, 1),
    expect.closeTo(250, 1),
    expect.closeTo(0, 1),
  ]);
  expect(one(centre[2]) - one(below[2])).toBeCloseTo(1514.9, 0);
});
