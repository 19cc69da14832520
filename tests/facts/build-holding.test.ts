import { describe, expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { blockedUp, raisedShare } from "../../src/facts/build/poise.ts";
import { buildPlan } from "../../src/facts/build-plan.ts";
import { factOf } from "../../src/facts/fact.ts";
import { noSettings } from "../../src/house/settings.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { buildText } from "../../src/report/build/text.ts";
import { ladder } from "./build-frames.ts";
import { frameOf } from "./known.ts";

const textOf = (file: FrameFile): string =>
  [...buildText(buildSheetOf("shelf.frame.json", frameOf(file), noSettings("2027-03-31")))].join("");

/** Two arms out of a wall with a rail across their ends. */
const shelf: FrameFile = {
  format: 1,
  title: "wall shelf",
  units: "mm-N-kg",
  bars: [
    { id: "arm-1", profile: "40x40-8", from: [100, 20, 1500], to: [100, 400, 1500] },
    { id: "arm-2", profile: "40x40-8", from: [900, 20, 1500], to: [900, 400, 1500] },
    { id: "rail", profile: "40x40-8", from: [0, 420, 1500], to: [1000, 420, 1500] },
  ],
  joints: [
    {
      bars: ["arm-1/to", "arm-2/to"],
      by: [
        { connector: "inside-bracket-40", on: "+x" },
        { connector: "inside-bracket-40", on: "-x" },
      ],
    },
  ],
  stands: [{ part: "foot-40-M8", bars: ["arm-1/from", "arm-2/from"], hold: "anchored" }],
};

describe("what hangs on a wall", () => {
  it("gets its feet first and is held up until they are anchored", () => {
    const text = textOf(shelf);
    expect(text).not.toContain("Tip it");
    expect(text).toContain("Before they go in, screw on arm-1.foot and arm-2.foot.");
    expect(text).toContain(
      "Hold arm-1 and arm-2 up until arm-1.foot and arm-2.foot are anchored to the wall; nobody stands under what hangs.",
    );
  });

  it("is anchored once it is on its feet where it stands on the floor too", () => {
    const text = textOf({
      ...shelf,
      bars: [...shelf.bars, { id: "leg", profile: "40x40-8", from: [500, 420, 0], to: [500, 420, 1480] }],
      joints: [...(shelf.joints ?? []), { bars: ["leg/to"], by: [{ connector: "inside-bracket-40", on: "+x" }] }],
      stands: [...(shelf.stands ?? []), { part: "foot-40-M8", bars: ["leg"] }],
    });
    expect(text).toContain("Anchor arm-1.foot and arm-2.foot to the wall, once it stands where it stays.");
    expect(text).not.toContain("up until");
  });
});

it("nothing of a mass whose centre is below the bars is left to lift", () => {
  const bars = [
    [0, 0, 1],
    [1, 1, 2],
  ] as const;
  expect(raisedShare(bars, [0, 0, 0.5])).toBe(0);
  // A lever over the whole height: half of it for a centre half way up.
  expect(raisedShare(bars, [0, 0, 1.5])).toBeCloseTo(0.5, 12);
});

it("a first piece is blocked up by what reaches below it", () => {
  expect(blockedUp([[0, 0, 0.7]], [[0, 0, 0.08]], [0, 0, -1])).toBeCloseTo(0.62, 12);
  expect(blockedUp([[0, 0, 0]], [[0, 0, 0.08]], [0, 0, -1])).toBe(0);
  // Lying on its +y side: what reaches further that way is below it.
  expect(blockedUp([[0, 0.2, 0.7]], [[0, 0.25, 0.08]], [0, 1, 0])).toBeCloseTo(0.05, 12);
});

it("a frame on the floor is neither held up nor anchored", () => {
  const steps = factOf(buildPlan, frameOf(ladder({ low: { z: 100, on: "above" } }))).flatMap((piece) => piece.steps);
  expect(steps.flatMap(({ anchors, feetFirst }) => [...anchors, ...feetFirst])).toEqual([]);
  expect(steps.some(({ hangs }) => hangs)).toBe(false);
});
