import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { barDiagram } from "../../src/drawing/bar-diagram.ts";
import { traced } from "../../src/facts/along-bar.ts";
import { factOf } from "../../src/facts/fact.ts";
import { governingView } from "../../src/facts/governing.ts";
import { offChord } from "../../src/facts/off-chord.ts";
import { response } from "../../src/facts/response.ts";
import { spans } from "../../src/facts/spans.ts";
import { frameOf, one } from "../facts/known.ts";
import { sheetInput } from "../report/sheet-of-text.ts";

describe("how a bar bends, drawn", () => {
  /** w(x) = 3 + 2 x − 5 x (1 − x): a frame that moves by 3, a bar that turns by 2 and sags by 5/4 between its ends. */
  const moved = { breaks: Float64Array.of(0, 1), coefficients: Float64Array.of(3, -3, 5), degree: 2 };

  it("leaves out what the whole frame moves and turns: a parabola off its chord is largest in its middle, 5/4", () => {
    const bent = offChord(moved, [0, 1]);
    for (const { at, value } of bent) expect(value).toBeCloseTo(-5 * at * (1 - at), 9);
  });

  it("is told from the place that holds it where there is one", () => {
    const [first, last] = [offChord(moved, [0])[0], offChord(moved, [0]).at(-1)];
    expect([first?.value, last?.value]).toEqual([0, 2]);
    expect(offChord(moved, [])).toEqual(traced(moved));
  });

  it("shows the sag that the rule found, at its middle, between what holds it", () => {
    const text = readFileSync("docs/rules/bar.sags.fault.frame.json", "utf8");
    const { report, frame } = sheetInput(text);
    const { at, measure } = one(report.findings.find(({ rule }) => rule === "bar.sags"));
    const known = one(frame ?? frameOf(JSON.parse(text)));
    const found = factOf(response, known);
    if (found.kind !== "solved" || !measure?.under) throw new Error("not solved");
    const view = one(governingView(found.views, { under: measure.under }));
    const own = factOf(spans, known).get(at.id) ?? [];
    const svg = one(barDiagram({ bar: at.id, view, spans: own, units: known.units }));
    expect(svg).toContain("bends along y");
    expect(svg).toContain(`>-${measure.shown.measured}</text>`);
  });
});
