import { expect, it } from "vitest";
import { proveRule } from "../../src/inspection/prove-rule.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { rule } from "../../src/rules/slot.mismatched.ts";
import { barOf, kitItem, tee } from "./base-frames.ts";

/** A pivot between post and rail with its axis at this x, mm, and its point in the middle of both: as near to one plane for leaves as to the other. */
const pivotAt = (x: number) => (file: FrameFile) => {
  file.pivots = [{ id: "link", bars: ["rail", "post"], part: "pivot-40", at: [x, 0, 500], axis: "+y" }];
};

/** A slanting bar on the face of the rail, held 300 mm from the post where it crosses it, its axis so far over the rail's, mm. */
const crossed =
  (part: string, up = 0) =>
  (file: FrameFile) => {
    file.bars.push({ id: "brace", profile: "40x40-8", from: [200, 40, 400], to: [400, 40, 600] });
    file.pivots = [
      { id: "pin", bars: ["brace", "rail"], part, at: [300 + up, 20, 500 + up], axis: "+y", locked: true },
    ];
  };

/** A shorter bar along the rail's +y face, tied to it at this distance from the rail's from point, mm. */
const tiedAt = (at: number) => (file: FrameFile) => {
  file.bars.push({ id: "beside", profile: "40x40-8", from: [0, 40, 500], to: [500, 40, 500] });
  file.ties = [{ id: "sides", bars: ["rail", "beside"], part: "side-tie-8", at: [at] }];
};

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
      // pivot-40 has its screws 20 mm to either side of its axis. The post's face is at x = 20.
      title: "a pivot whose screws just get to the post",
      edit: pivotAt(20 + 19.9),
      finds: [{ at: "link/1", key: "astride" }],
    },
    {
      title: "a pivot that just does not",
      edit: pivotAt(20 + 20.1),
      finds: [{ at: "link", key: "apart", measured: 0.0201 }],
    },
    {
      title: "a pivot beyond the end of the rail",
      edit: pivotAt(630),
      finds: [
        { at: "link", key: "apart", measured: 0.61 },
        { at: "link", key: "apart", measured: 0.03 },
      ],
    },
    {
      title: "a pivot with leaves between bars that cross",
      edit: crossed("pivot-40"),
      finds: [{ at: "pin/1", key: "plane" }],
    },
    { title: "a tie between bars that cross", edit: crossed("side-tie-8"), finds: [] },
    {
      // On the line of the brace, and so 0.5 and 0.7 mm over that of the rail.
      title: "a tie just within the play of the slot",
      edit: crossed("side-tie-8", 0.5),
      finds: [],
    },
    {
      title: "a tie just beside the slot of the bar with the nut",
      edit: crossed("side-tie-8", 0.7),
      finds: [{ at: "pin/1/a1", key: "off", measured: 0.0007 }],
    },
    {
      // The same 0.7 mm, measured across the other bar, which now is the one with the head.
      title: "a tie just beside the slot of the bar with the head",
      edit: (file) => {
        crossed("side-tie-8", 0.7)(file);
        for (const pivot of file.pivots ?? []) pivot.bars = ["rail", "brace"];
      },
      finds: [{ at: "pin/1", key: "off", measured: 0.0007 }],
    },
    {
      title: "a pivot of another slot size",
      edit: (file) => {
        pivotAt(30)(file);
        for (const pivot of file.pivots ?? []) pivot.part = "pivot-45";
      },
      finds: [
        { at: "link/1", key: "astride" },
        { at: "link", key: "size" },
        { at: "link", key: "size" },
      ],
    },
    {
      title: "a tie of another slot size",
      edit: (file) => {
        file.bars.push({ id: "beside", profile: "40x40-8", from: [0, 40, 500], to: [600, 40, 500] });
        file.ties = [{ id: "sides", bars: ["rail", "beside"], part: "side-tie-10", at: [100] }];
      },
      finds: [
        { at: "sides", key: "size" },
        { at: "sides", key: "size" },
      ],
    },
    { title: "a tie where both bars are", edit: tiedAt(300), finds: [] },
    { title: "a tie where only the first bar is", edit: tiedAt(550), finds: [{ at: "sides/1/a1", key: "away" }] },
    {
      title: "a tie past the end of the first bar",
      edit: tiedAt(601),
      finds: [
        { at: "sides/1", key: "away" },
        { at: "sides/1/a1", key: "away" },
      ],
    },
    {
      // Face B looks -y; at roll 270 face A, the closed one, does. The head of the tie lies behind it.
      title: "a tie through the closed face of the first bar",
      edit: (file) => {
        tiedAt(300)(file);
        Object.assign(barOf(file, "rail"), { profile: "40x40-8-one-closed", roll: 270 });
      },
      finds: [{ at: "sides/1", key: "closed" }],
    },
    {
      title: "a tie between bars whose slots run 1 mm beside each other",
      edit: (file) => {
        tiedAt(300)(file);
        const beside = barOf(file, "beside");
        for (const end of ["from", "to"] as const) beside[end] = [end === "from" ? 0 : 500, 40, 501];
      },
      finds: [{ at: "sides/1/a1", key: "off", measured: 0.001 }],
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
