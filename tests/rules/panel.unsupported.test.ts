import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile, Panel } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/panel.unsupported.ts";
import { pane, paneled } from "./panel-frames.ts";

type Edges = NonNullable<Panel["edges"]>;
const inSlotsOf = (...edges: Edges) => pane((panel) => Object.assign(panel, { edges }));
const [left, top, right, bottom] = (["left", "top", "right", "bottom"] as const).map((bar) => ({ bar }));

/** The pane, and a board on the top bar: 40 mm deep about y = 0; a ledge 760 mm behind it, as high. */
function shelved(): FrameFile {
  const file = paneled();
  file.bars.push({ id: "ledge", profile: "40x40-8", from: [0, 760, 1000], to: [1000, 760, 1000] });
  file.panels?.push({ id: "board", sheet: "plywood-18", held: "laid", bars: ["top", "ledge"] });
  return file;
}

/** The board on these bars, past them by so many mm towards +y. */
const boardOn = (bars: [string, ...string[]], past: number) => (file: FrameFile) => {
  for (const panel of file.panels ?? [])
    if (panel.id === "board") Object.assign(panel, { bars, overhang: [0, 0, 0, past] });
};

it("panel.unsupported: two slots that face each other; the middle of a loose sheet over what carries it (geometry, statics)", () => {
  if (!left || !top || !right || !bottom) throw new Error("no edges");
  const slides = [{ at: "pane", key: "slides" }];
  const falls = [{ at: "board", key: "falls" }];
  const wrong = proveRule(rule, shelved(), [
    { title: "held all round, on two bars", edit: () => {}, finds: [] },
    { title: "open at the top", edit: inSlotsOf(left, "free", right, bottom), finds: [] },
    { title: "between two uprights", edit: inSlotsOf(left, "free", right, "free"), finds: [] },
    { title: "in one corner", edit: inSlotsOf(left, "free", "free", bottom), finds: slides },
    { title: "hung from the top alone", edit: inSlotsOf("free", top, "free", "free"), finds: slides },
    // On one bar of 40 mm with a mm past it the middle lies a/2 from the middle of the bar.
    { title: "on one bar, 39 mm past it", edit: boardOn(["top"], 39), finds: [] },
    { title: "on one bar, 41 mm past it", edit: boardOn(["top"], 41), finds: falls },
    // Two bars carry it from −20 to 780: past the second by 800 the middle lies on its edge.
    { title: "on two, 799 mm past them", edit: boardOn(["top", "ledge"], 799), finds: [] },
    { title: "on two, 801 mm past them", edit: boardOn(["top", "ledge"], 801), finds: falls },
  ]);
  expect(wrong).toEqual([]);
});
