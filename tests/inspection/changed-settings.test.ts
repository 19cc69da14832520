import { expect, it } from "vitest";
import type { HouseInForce, Strictness } from "../../src/house/house-in-force.ts";
import { noSettings } from "../../src/house/settings.ts";
import { inspectFile } from "../../src/inspection/inspect-file.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { builtInRules } from "../../src/rules/index.generated.ts";
import { table } from "../rules/table.ts";

function changed(
  edit: (file: FrameFile) => void,
  limits: Record<string, string> = {},
  levels: Record<string, Strictness> = {},
) {
  const file = table();
  edit(file);
  const house: HouseInForce = {
    ...noSettings("2027-03-31"),
    rules: builtInRules,
    criteria: new Map(
      Object.entries(limits).map(([name, value]) => [name, { value, from: "house", said: "team.house.json" }]),
    ),
    strictness: new Map(Object.entries(levels)),
  };
  const bytes = new TextEncoder().encode(JSON.stringify(file));
  return inspectFile({ file: "table.frame.json", bytes, stock: [], house }).changed;
}

it("says nothing of a frame at the usual limits, also where they are written out", () => {
  expect(changed(() => {})).toEqual([]);
  expect(changed(() => {}, { "joint-gap": "0.5 mm", sag: "span / 300, at least 1 mm" })).toEqual([]);
});

it("names the method of the frame", () => {
  const stress = (file: FrameFile): void => {
    file.method = "allowable-stress";
  };
  expect(changed(stress)).toEqual([
    { what: "method", value: "allowable-stress", usual: "partial-factors", by: "frame", parts: [] },
  ]);
});

it("names a limit of the house once, and what a frame says instead of it", () => {
  const ofHouse = { what: "joint-gap", value: "1 mm", usual: "0.5 mm", by: "house", parts: [] };
  expect(changed(() => {}, { "joint-gap": "1 mm" })).toEqual([ofHouse]);
  const own = (file: FrameFile): void => {
    file.criteria = { "joint-gap": "0.8 mm" };
  };
  expect(changed(own, { "joint-gap": "1 mm" })).toEqual([{ ...ofHouse, value: "0.8 mm", by: "frame" }]);
});

it("names a limit of single parts with them", () => {
  const own = (file: FrameFile): void => {
    for (const bar of file.bars.slice(0, 2)) bar.criteria = { sag: "span / 200" };
  };
  expect(changed(own)).toEqual([
    { what: "sag", value: "span / 200", usual: "span / 300, at least 1 mm", by: "part", parts: ["leg-1", "leg-2"] },
  ]);
});

it("names a rule that is off or at another level", () => {
  expect(changed(() => {}, {}, { "bar.sags": "off", "end.bare": "note", "joint.gap": "hold" })).toEqual([
    { what: "bar.sags", value: "off", usual: "hold", by: "house", parts: [] },
    { what: "end.bare", value: "note", usual: "hold", by: "house", parts: [] },
  ]);
});
