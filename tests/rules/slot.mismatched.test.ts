import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import { rule } from "../../src/rules/slot.mismatched.ts";
import { barOf, kitItem, tee } from "./base-frames.ts";

it("slot.mismatched: connectors, nuts and slots belong to each other", () => {
  const wrong = proveRule(rule, tee(), [
    {
      title: "a bracket of another slot size",
      edit: (file) => {
        kitItem(file).connector = "inside-bracket-30";
      },
      finds: [
        { at: "rail.from/1", key: "size" },
        { at: "rail.from/1", key: "size" },
      ],
    },
    {
      title: "a rail of another slot size",
      edit: (file) => {
        barOf(file, "rail").profile = "45x45-10";
      },
      finds: [{ at: "rail.from/1", key: "size" }],
    },
    {
      title: "a thread no nut of the slot has",
      edit: (file) => {
        kitItem(file).screw = "M10x16";
      },
      finds: [
        { at: "rail.from/1/a1", key: "nut" },
        { at: "rail.from/1/b1", key: "nut" },
      ],
    },
    {
      // Face A is closed and looks up at roll 0; turned over it looks down, where the bracket sits.
      title: "on the closed face",
      edit: (file) => {
        barOf(file, "rail").profile = "40x40-8-one-closed";
        barOf(file, "rail").roll = 180;
      },
      finds: [{ at: "rail.from/1/a1", key: "closed" }],
    },
    {
      title: "beside the closed face",
      edit: (file) => {
        barOf(file, "rail").profile = "40x40-8-one-closed";
      },
      finds: [],
    },
    {
      title: "just within the play of the slot",
      edit: (file) => {
        kitItem(file).shift = 0.5;
      },
      finds: [],
    },
    {
      title: "just beside the slot",
      edit: (file) => {
        kitItem(file).shift = -0.7;
      },
      finds: [
        { at: "rail.from/1/a1", key: "off", measured: 0.0007 },
        { at: "rail.from/1/b1", key: "off", measured: 0.0007 },
      ],
    },
    {
      title: "beside the slot, more allowed on the rail",
      edit: (file) => {
        kitItem(file).shift = 0.7;
        barOf(file, "rail").criteria = { "off-slot": "0.8 mm" };
      },
      finds: [{ at: "rail.from/1/b1", key: "off", measured: 0.0007 }],
    },
    {
      // Half the opening and half the cavity, (8.2 + 18) / 2 = 13.1 mm beside the line, there is no slot any more.
      title: "off the slot altogether",
      edit: (file) => {
        kitItem(file).shift = 13.2;
      },
      finds: [
        { at: "rail.from/1/a1", key: "away" },
        { at: "rail.from/1/b1", key: "away" },
      ],
    },
    {
      // Screw b1 would sit at z = 458.
      title: "a post that starts over the lower leg",
      edit: (file) => {
        barOf(file, "post").from = [0, 0, 459];
      },
      finds: [{ at: "rail.from/1/b1", key: "away" }],
    },
    {
      title: "end against end",
      edit: (file) => {
        const rail = barOf(file, "rail");
        rail.from = [0, 0, 1000];
        rail.to = [0, 0, 1600];
        kitItem(file).on = "+x";
      },
      finds: [{ at: "rail.from/1", key: "misplaced" }],
    },
  ]);
  expect(wrong).toEqual([]);
});
