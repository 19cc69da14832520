import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/load.none.ts";
import { tee } from "./base-frames.ts";

it("load.none: a frame says what it has to carry", () => {
  const base = { ...tee(), loads: [{ case: "shelf", on: "rail", force: 100 }] };
  const wrong = proveRule(rule, base, [
    {
      title: "nothing declared",
      edit: (file) => {
        delete file.loads;
      },
      finds: [{ at: "frame", key: "none" }],
    },
    {
      title: "a load on a bar that hangs on nothing",
      edit: (file) => {
        file.bars.push({ id: "stray", profile: "40x40-8", from: [3000, 3000, 500], to: [3000, 3500, 500] });
        file.loads?.push({ id: "on-stray", case: "shelf", on: "stray", force: 50 });
      },
      finds: [{ at: "on-stray", key: "lost" }],
    },
    {
      title: "a load written for a copy that brings it as well",
      edit: (file) => {
        file.copies = [{ of: ["rail"], suffix: "-2", shift: [0, 0, 300] }];
        file.loads?.push({ id: "on-copy", case: "shelf", on: "rail-2", force: 100 });
      },
      finds: [{ at: "on-copy", key: "twice" }],
    },
    {
      title: "the same load in two cases",
      edit: (file) => {
        file.loads?.push({ case: "parcel", on: "rail", force: 100 });
      },
      finds: [],
    },
    {
      title: "a load of another amount, place or way beside it",
      edit: (file) => {
        file.loads?.push(
          { case: "shelf", on: "rail", force: 101 },
          { case: "shelf", on: "rail", force: 100, at: 200 },
          { case: "shelf", on: "rail", force: 100, direction: "+y" },
        );
      },
      finds: [],
    },
    {
      title: "equipment only",
      edit: (file) => {
        delete file.loads;
        file.masses = [{ id: "pump", mass: 5, centre: [300, 0, 600], on: ["rail"] }];
      },
      finds: [],
    },
  ]);
  expect(wrong).toEqual([]);
});
