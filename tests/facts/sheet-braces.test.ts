import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { fastenedSheets } from "../../src/facts/fastened-sheets.ts";
import { response } from "../../src/facts/response.ts";
import { sectionOf } from "../../src/facts/sections.ts";
import { sways } from "../../src/facts/sway.ts";
import type { Frame } from "../../src/model/frame.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { PORTAL, portal, testedBracket } from "../rules/portal.ts";
import { frameFrom } from "../rules/table.ts";

const PUSH = 150;
/** Screws of each leg: from 20 mm over the floor to 20 mm under its end, 860 mm up. */
const ROW = { screws: 5, length: 0.82 };

/** Two portals with tested brackets and backs on both sides, screwed to the legs. */
function backed(sheet = "plywood-12", pitch = 250, more: (file: FrameFile) => void = () => {}): Frame {
  const file = portal("tested");
  const back = (id: string, bars: [string, string], on: "+y" | "-y") => ({
    id,
    sheet,
    held: "on-face" as const,
    bars,
    on,
    screws: { pitch },
  });
  file.panels = [back("back", ["leg-3", "leg-4"], "+y"), back("front", ["leg-1", "leg-2"], "-y")];
  more(file);
  return frameFrom(file, testedBracket("tested", 1e5));
}

/** Largest sway along x with typical joints, m. */
function sway(frame: Frame): number {
  const along = factOf(sways, frame).filter(({ axis, view }) => axis === 0 && view.bound === "typical");
  expect(along.length).toBeGreaterThan(0);
  return Math.max(...along.map(({ amount }) => amount));
}

function braced(frame: Frame): readonly string[] {
  const found = factOf(response, frame);
  if (found.kind !== "solved") throw new Error(found.kind);
  return found.braces("typical").map(({ sheet }) => sheet.panel.ref.id);
}

describe("a frame with screwed sheets", () => {
  it("sways as H h²/k (1/Σx² + 1/Σy²) + H h²/(G t A) and the twist of the legs (elastic model, Källsner and Girhammar 2009, from memory)", () => {
    const { height, span } = PORTAL;
    const step = ROW.length / (ROW.screws - 1);
    let y2 = 0;
    for (let i = 0; i < ROW.screws; i++) y2 += 2 * (i * step - ROW.length / 2) ** 2;
    const x2 = 2 * ROW.screws * (span / 2) ** 2;
    const each = PUSH / 2;
    const shear = 0.6e9 * 0.012 * 1.5 * 0.86;
    // The screws pull 20 mm beside the axes of the two legs, half the push at either end of a row, and twist them: T² L/GJ.
    const frame = backed();
    const leg = frame.stock.profiles.get("40x40-8");
    if (!leg) throw new Error("no such profile");
    const twist = (2 * ((each / 2) * 0.02) ** 2 * ROW.length) / (26e9 * sectionOf(leg).J * each);
    const wanted = each * height ** 2 * ((1 / x2 + 1 / y2) / 4e6 + 1 / shear) + twist;
    expect(Math.abs(sway(frame) / wanted - 1)).toBeLessThan(0.05);
  });

  it("sways as if it had none where the screws are few, or the sheets are in slots", () => {
    const bare = sway(backed("plywood-12", 250, (file) => delete file.panels));
    expect(sway(backed("plywood-12", 400)) / bare).toBeCloseTo(1, 1);
    expect(factOf(fastenedSheets, backed("plywood-12", 400))).toEqual([]);
    expect(factOf(fastenedSheets, backed("plywood-12", 300))).toHaveLength(2);
  });

  it("is braced by sheets up to what their screws are trusted with, and no further", () => {
    const pulled = (force: number): Frame =>
      backed("plywood-12", 250, (file) => {
        file.loads = [
          { case: "goods", on: ["top-1", "top-3"], line: 5 },
          { case: "pull", on: "leg-1", at: 840, force, direction: "+x" },
        ];
      });
    expect(braced(pulled(300))).toEqual(["back", "front"]);
    expect(braced(pulled(4000))).toEqual([]);
  });

  it("is not braced by a sheet so thin that it buckles in shear", () => {
    const thin = backed("aluminium-1.5", 250, (file) => {
      file.loads = [
        { case: "goods", on: ["top-1", "top-3"], line: 5 },
        { case: "pull", on: "leg-1", at: 840, force: 600, direction: "+x" },
      ];
    });
    expect(braced(thin)).toEqual(["back"]);
    expect(braced(backed("aluminium-1.5"))).toEqual(["back", "front"]);
  });
});
