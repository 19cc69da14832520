import { expect, it } from "vitest";
import { partCounts } from "../../src/facts/part-counts.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, kitItem, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const counts = (edit: (file: FrameFile) => void = () => {}) =>
  known(partCounts, edited(tee(), edit)).map(({ kind, name, count }) => [kind, name, count]);

it("a bracket, its two screws and nuts, and caps on the two ends that nothing covers", () => {
  expect(counts()).toEqual([
    ["cap", "cap-40x40", 2],
    ["connector", "inside-bracket-40", 1],
    ["nut", "nut-8-M8", 2],
    ["screw", "M8x16", 2],
  ]);
});

it("an omitted screw takes its nut with it; drop-in nuts are others", () => {
  expect(
    counts((file) => {
      Object.assign(kitItem(file), { omit: ["b1"], nut: "drop-in" });
      file.defaults = { caps: "none" };
    }),
  ).toEqual([
    ["connector", "inside-bracket-40", 1],
    ["nut", "drop-in-8-M8", 1],
    ["screw", "M8x16", 1],
  ]);
});

it("an end screw needs no nut; feet and named caps are counted", () => {
  expect(
    counts((file) => {
      Object.assign(kitItem(file), { connector: "end-screw-8" });
      delete kitItem(file).on;
      file.defaults = { caps: "none" };
      file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
      barOf(file, "rail").ends = { to: { cap: "cap-40x40" } };
    }),
  ).toEqual([
    ["cap", "cap-40x40", 1],
    ["connector", "end-screw-8", 1],
    ["screw", "M8x25-button", 1],
    ["stand", "foot-40-M8", 1],
  ]);
});

it("no standard cap is counted on an end that a foot is under or that stands half on a bar; a named one is", () => {
  const caps = (edit: (file: FrameFile) => void) => counts(edit).filter(([kind]) => kind === "cap");
  const standing = (file: FrameFile): void => {
    barOf(file, "post").from = [0, 0, 50];
    file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
  };
  const half = (file: FrameFile): void => {
    Object.assign(barOf(file, "rail"), {
      from: [20, 20, 500],
      to: [600, 20, 500],
      ends: { from: { cut: "as-drawn" } },
    });
  };
  // The top of the post and the far end of the rail; half beside it, the post's foot stands on the floor.
  expect(caps(standing)).toEqual([["cap", "cap-40x40", 2]]);
  expect(caps(half)).toEqual([["cap", "cap-40x40", 2]]);
  expect(
    caps((file) => {
      standing(file);
      barOf(file, "post").ends = { from: { cap: "cap-40x40" } };
    }),
  ).toEqual([["cap", "cap-40x40", 3]]);
});

it("sheets of one size are counted together, others apart", () => {
  const sheet = (id: string, x: number) => ({
    id,
    sheet: "plywood-12",
    held: "laid" as const,
    bars: ["rail"] as [string],
    on: "+z" as const,
    overhang: [0, x, 0, 0] as [number, number, number, number],
  });
  const found = known(
    partCounts,
    edited(tee(), (file) => {
      file.panels = [sheet("a", 0), sheet("b", 0), sheet("c", 10)];
    }),
  ).filter(({ kind }) => kind === "sheet");
  expect(found.map(({ count, size }) => [count, ...(size ?? []).map((m) => Math.round(m * 1e4) / 10)])).toEqual([
    [2, 580, 40],
    [1, 590, 40],
  ]);
});
