import { defineCriterion } from "../criteria/criterion.ts";
import { bodies } from "../facts/bodies.ts";
import { clashes } from "../facts/clashes.ts";
import { sheetClashes } from "../facts/sheet-clashes.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const clashDepth = defineCriterion({
  name: "clash-depth",
  of: "frame",
  quantity: "length",
  standard: "0.1 mm",
  within: ["0 mm", "1 mm"],
  about: "how far two parts may run into each other on paper before they count as sharing room",
  basis: "common practice: finer than a saw cut",
});

export const rule = defineRule({
  id: "bar.clash",
  title: "No two parts take the same room",
  group: "drawing",
  level: "reject",
  basis: ["geometry: separating axes of the parts' envelopes"],
  needs: { clashes, sheetClashes, bodies },
  criteria: { allowed: clashDepth },
  messages: {
    clash: {
      text: "runs {depth:length} into {other:part}",
      advice: "move one of them, or cut a bar shorter, with eye protection on, and gloves once the saw stands still",
      measures: "length",
    },
    sheet: {
      text: "{bar:bar} stands in it: one of them would have to move {depth:length}",
      advice:
        'let the sheet end in front of the bar, with an "overhang" below zero where need be, divide it there, or cut "notches" for bars in its corners',
      measures: "length",
    },
  },
  *inspect({ clashes: found, sheetClashes: inSheets, bodies: all }, { allowed }, say) {
    for (const { a, b, depth } of found)
      yield say.clash(a, { depth: si(depth, "length"), other: b }, { measured: si(depth, "length"), limit: allowed });
    for (const { panel, bar, depth } of inSheets)
      yield say.sheet(panel, { bar, depth: si(depth, "length") }, { measured: si(depth, "length"), limit: allowed });
    const touched = new Set(found.flatMap(({ a, b }) => [a.id, b.id]));
    const none = si(0, "length");
    for (const { bar } of all.values()) {
      if (!touched.has(bar.ref.id))
        yield say.clash(bar.ref, { depth: none, other: bar.ref }, { measured: none, limit: allowed });
    }
  },
});
