import assert from "node:assert/strict";
import { test } from "node:test";
import { proveRule } from "trysquare";
import { rule } from "./doorway.mjs";

/** A post, and a rail on each of two of its faces: 1000 mm along x, 800 mm along y, 1500 mm high. */
const corner = {
  format: 1,
  title: "corner",
  units: "mm-N-kg",
  bars: [
    { id: "post", profile: "40x40-8", from: [20, 20, 0], to: [20, 20, 1500] },
    { id: "long", profile: "40x40-8", from: [20, 20, 700], to: [1000, 20, 700] },
    { id: "deep", profile: "40x40-8", from: [20, 20, 900], to: [20, 800, 900] },
  ],
};

/** Draws the rail along y to end at this y, mm. */
const deep = (y) => (file) => {
  file.bars[2].to = [20, y, 900];
};

test("a frame wider than the door is found", () => {
  const wrong = proveRule(rule, corner, [
    { title: "as wide as the door", edit: deep(900), finds: [] },
    { title: "a little wider", edit: deep(910), finds: [{ at: "frame", key: "wide", measured: 0.91 }] },
    {
      title: "another door",
      edit: (file) => {
        file.criteria = { "door-width": "750 mm" };
      },
      finds: [{ at: "frame", key: "wide", measured: 0.8 }],
    },
  ]);
  assert.deepEqual(wrong, []);
});
