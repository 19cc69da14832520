import { describe, expect, it } from "vitest";
import { factOf } from "../../src/facts/fact.ts";
import { bounds } from "../../src/facts/joint-stiffness.ts";
import { response } from "../../src/facts/response.ts";
import { governedSag, sags } from "../../src/facts/sag.ts";
import { spans } from "../../src/facts/spans.ts";
import { sheetRoles } from "../../src/inspection/sheet-roles.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { portal } from "../rules/portal.ts";
import { frameFrom } from "../rules/table.ts";

type Panel = NonNullable<FrameFile["panels"]>[number];
const back: Panel = {
  id: "back",
  sheet: "plywood-12",
  held: "on-face",
  bars: ["leg-3", "leg-4"],
  on: "+y",
  screws: { pitch: 250 },
};
const front: Panel = { ...back, id: "front", bars: ["leg-1", "leg-2"], on: "-y" };
const few: Panel = { ...front, screws: { pitch: 400 } };
const withPanels = (panels: readonly Panel[], push = 0) => {
  const file = { ...portal(), panels } as FrameFile;
  file.loads = [
    { case: "goods", on: ["top-1", "top-3"], line: 2 },
    ...(push > 0 ? [{ case: "pull", on: "leg-4", at: 840, force: push, direction: "+x" as const }] : []),
  ] as NonNullable<FrameFile["loads"]>;
  return frameFrom(file);
};

describe("what is said of panels that brace", () => {
  it("names one, and each of several, and what is weight only", () => {
    expect(sheetRoles(withPanels([]))).toEqual([]);
    expect(sheetRoles(withPanels([back]))).toEqual([
      "the screwed sheet back braces the frame as far as its screws hold",
    ]);
    expect(sheetRoles(withPanels([back, front]))).toEqual([
      "the screwed sheets back and front brace the frame as far as their screws hold",
    ]);
    expect(sheetRoles(withPanels([back, few]))).toEqual([
      "the screwed sheet back braces the frame as far as its screws hold",
      "panels in slots, laid or with few screws are weight only and brace nothing",
    ]);
  });

  it("says so where the screws would give", () => {
    expect(sheetRoles(withPanels([back], 4000))).toEqual([
      "the screwed sheet back would give at its screws and braces nothing",
    ]);
  });
});

it("a weight alone never takes a sheet's bracing away: stiffer joints then give less, not more", () => {
  const frame = withPanels([back]);
  const found = factOf(response, frame);
  if (found.kind !== "solved") throw new Error(found.kind);
  for (const bound of bounds) expect(found.braces(bound)).toHaveLength(1);
  const [span] = factOf(spans, frame).get("top-3") ?? [];
  const sag = span && governedSag(factOf(sags, frame), found.views, "top-3", span);
  expect(sag?.measured).toBeLessThan(sag?.otherBounds?.soft ?? 0);
  expect(sag?.measured).toBeGreaterThan(sag?.otherBounds?.stiff ?? Infinity);
});
