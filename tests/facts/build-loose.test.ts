import { describe, expect, it } from "vitest";
import { buildSheetOf } from "../../src/cli/build-sheet-of.ts";
import { noSettings } from "../../src/house/settings.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { buildJson } from "../../src/report/build/json.ts";
import { buildText } from "../../src/report/build/text.ts";
import { standingBox } from "./build-frames.ts";
import { frameOf } from "./known.ts";

const RING: [string, ...string[]] = ["front-low", "right-low", "back-low", "left-low", "shelf"];

/** Four posts with a ring of rails round a notched sheet, built as one; joined to the posts alone, or also to each other. */
function decked(more: Partial<FrameFile> = {}): FrameFile {
  const box = standingBox(1000);
  return {
    ...box,
    panels: [
      {
        id: "shelf",
        sheet: "polycarbonate-5",
        held: "in-slot",
        edges: [{ bar: "front-low" }, { bar: "right-low" }, { bar: "back-low" }, { bar: "left-low" }],
        notches: [25, 25],
      },
    ],
    groups: [{ id: "deck", parts: RING }],
    ...more,
  };
}

const sheetOf = (file: FrameFile) => buildSheetOf("deck.frame.json", frameOf(file), noSettings("2000-01-01"));

describe("a piece that only the slots round its sheet keep together", () => {
  const sheet = sheetOf(decked());
  const deck = sheet.pieces.find(({ planned }) => planned.id === "deck");

  it("is told by the sets of bars that its own joints hold together", () => {
    expect(deck?.planned.loose.flat().sort()).toEqual(["back-low", "front-low", "left-low", "right-low"]);
    expect(deck?.planned.loose).toHaveLength(4);
    expect(sheet.pieces.find(({ planned }) => planned.id === "")?.planned.loose).toEqual([]);
  });

  it("is strapped, carried by two and kept so until it is joined, however light", () => {
    expect(deck?.handling?.mass).toBeLessThan(25); // kg, what one person may lift: ISO 11228-1
    expect(deck?.handling?.people).toBe(2);
    const text = [...buildText(sheet)].join("");
    expect(text).toMatch(/Not rigid in itself: no screw joins \S+, \S+, \S+ and \S+ to each other\./);
    expect(text).toContain("Put a strap round it, and lift and turn it flat, one person at each end.");
    expect(text).toContain("Leave the strap round A (deck) until every end of it is joined.");
    const json = JSON.parse([...buildJson(sheet)].join("")) as { pieces: { id: string; loose?: string[][] }[] };
    expect(json.pieces.filter(({ loose }) => loose).map(({ id }) => id)).toEqual(["deck"]);
  });

  it("is not one whose bars are screwed to each other, in one set or by way of a post", () => {
    const posts = ["post-1", "post-2", "post-3", "post-4"];
    const whole = sheetOf(decked({ groups: [{ id: "deck", parts: [...RING, ...posts] }] }));
    expect(whole.pieces.map(({ planned }) => planned.loose)).toEqual(whole.pieces.map(() => []));
    expect([...buildText(whole)].join("")).not.toContain("rigid");
  });
});
