import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { ModelData, ToolData } from "../../src/drawing/model3d/model-data.ts";
import { toolMeshes } from "../../src/viewer/tool-mesh.ts";
import { sheetOfText } from "./sheet-of-text.ts";

const page = sheetOfText(readFileSync("docs/rules/screw.no-room.fault.frame.json", "utf8"));
const model = JSON.parse(/<script[^>]*id="model">(.*?)<\/script>/s.exec(page)?.[1] ?? "") as ModelData;
const length = (v: readonly number[]): number => Math.hypot(...v);
const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, c, i) => sum + c * (b[i] ?? 0), 0);

/** 50 mm of handle about the origin, free over a third of the turn. */
const third: ToolData = {
  words: "",
  at: [0, 0, 0],
  zero: [1, 0, 0],
  quarter: [0, 1, 0],
  reach: 50,
  free: [0, (2 * Math.PI) / 3],
};

describe("the turn of a tool in the view that turns", () => {
  it("goes with each finding on the room for a tool, round the axis of its screw", () => {
    const ids = [...page.matchAll(/id="f([\d.]+)"[^>]*data-rule="screw\.no-room"/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThan(0);
    for (const id of ids) {
      const tool = model.tools[model.poses.find(({ finding }) => finding === id)?.tool ?? -1];
      if (!tool) throw new Error(`no tool at ${id}`);
      expect(page).toContain(tool.words);
      expect([length(tool.zero), length(tool.quarter), dot(tool.zero, tool.quarter)].map((v) => v.toFixed(6))).toEqual([
        "1.000000",
        "1.000000",
        "0.000000",
      ]);
      // ISO 2936:2014: the arms of keys are tens of millimetres long, those of the largest less than a quarter of a metre.
      expect(tool.reach).toBeGreaterThan(10);
      expect(tool.reach).toBeLessThan(250);
    }
  });

  it("fills the free sector, r²α/2, and puts spokes over the rest alone", () => {
    const { filled: free, lines } = toolMeshes(third);
    let area = 0;
    for (let i = 0; i < free.at.length; i += 9) {
      const [x1 = 0, y1 = 0] = [free.at[i + 3], free.at[i + 4]];
      const [x2 = 0, y2 = 0] = [free.at[i + 6], free.at[i + 7]];
      area += (x1 * y2 - x2 * y1) / 2;
    }
    expect(area / ((50 * 50 * (2 * Math.PI)) / 3 / 2)).toBeCloseTo(1, 2);
    const spokes: number[] = [];
    for (let i = 0; i < lines.at.length; i += 6) {
      const [x = 0, y = 0, , u = 0, v = 0] = lines.at.subarray(i, i + 6);
      if (Math.hypot(x, y) < 45) spokes.push((Math.atan2(v, u) + 2 * Math.PI) % (2 * Math.PI));
    }
    // Every sixth degree of 360 that is not among the first 120: 126 … 354.
    expect(spokes).toHaveLength(39);
    expect(Math.min(...spokes)).toBeCloseTo((126 / 180) * Math.PI, 3);
  });
});
