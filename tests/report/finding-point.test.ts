import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { sceneOf } from "../../src/drawing/scene.ts";
import { findingPoints } from "../../src/report/sheet/finding-point.ts";
import { sheetInput } from "./sheet-of-text.ts";

it("points at where two bores meet inside a leg: where the axes of the two bars bolted through it cross, as drawn", () => {
  const { report, frame } = sheetInput(readFileSync("docs/rules/bore.clash.fault.frame.json", "utf8"));
  const clash = report.findings.find(({ rule, at }) => rule === "bore.clash" && at.id === "leg-1");
  if (!frame || !clash) throw new Error("no clash in leg-1");
  const point = findingPoints(frame, sceneOf(frame))(clash);
  // Rail and stay are both drawn from [-500, -300, 500] mm.
  expect(point?.map((c) => Math.round(c * 1000))).toEqual([-500, -300, 500]);
});
