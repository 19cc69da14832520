import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { buildPlan } from "../../src/facts/build-plan.ts";
import { factOf } from "../../src/facts/fact.ts";
import { partCounts } from "../../src/facts/part-counts.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, kitItem, tee } from "../rules/base-frames.ts";
import { portal } from "../rules/portal.ts";
import { frameOf, known } from "./known.ts";

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

const demo = (name: string): FrameFile =>
  JSON.parse(readFileSync(new URL(`../../docs/demo/${name}.frame.json`, import.meta.url), "utf8")) as FrameFile;
const counted = (file: FrameFile, kinds: readonly string[]) =>
  known(partCounts, file)
    .filter(({ kind }) => kinds.includes(kind))
    .map(({ kind, name, count, length }) => [kind, name, count, ...(length === undefined ? [] : [length])]);

it("a door brings its hinges and its latch, a screw and a nut in each of their holes, and panels their strips", () => {
  const bare = demo("mixer-guard");
  const doors = bare.doors ?? [];
  const of = (file: FrameFile) => new Map(counted(file, ["connector", "screw", "nut"]).map(([, name, n]) => [name, n]));
  const [whole, without] = [of(bare), of({ ...bare, doors: [] as never })];
  expect(doors).toHaveLength(1);
  const more = (name: string): number => Number(whole.get(name) ?? 0) - Number(without.get(name) ?? 0);
  expect(more("hinge-40")).toBe(2);
  expect(more("pivot-40")).toBe(1);
  // Four holes in a hinge, two in the latch: by hand from the drawing.
  expect(more("M8x16")).toBe(10);
  expect(more("nut-8-M8")).toBe(10);
  // The roof, 1178 by 978 mm, is held along all four edges, and so is everything else of 1178 mm.
  const strips = counted(bare, ["gasket"]).filter(([, , , length]) => Math.abs(Number(length) - 1.178) < 1e-6);
  expect(strips).toEqual([["gasket", "strip-8", 6, 1.178]]);
});

it("a sheet on faces brings the screws of its rows, at most so far apart", () => {
  const back = (file: FrameFile, screws: object): FrameFile => ({
    ...file,
    panels: [{ id: "back", sheet: "plywood-12", held: "on-face", bars: ["leg-3", "leg-4"], on: "+y", screws }] as never,
  });
  // Legs of 860 mm: 820 mm between the first and the last screw, five of them at 205 mm.
  expect(counted(back(portal(), { pitch: 250, screw: "M8x25" }), ["screw"])).toContainEqual(["screw", "M8x25", 10]);
  expect(counted(back(portal(), { pitch: 205, screw: "M8x25" }), ["screw"])).toContainEqual(["screw", "M8x25", 10]);
  expect(counted(back(portal(), { pitch: 200, screw: "M8x25" }), ["screw"])).toContainEqual(["screw", "M8x25", 12]);
  expect(counted(back(portal(), { pitch: 250 }), ["screw"])).toContainEqual([
    "screw",
    "a screw and nut for plywood-12 on slot 8",
    10,
  ]);
});

/** Screws and nuts by name, as the list counts them and as the steps of building use them up. */
function bothCounts(file: FrameFile) {
  const frame = frameOf(file);
  const tally = (lines: readonly (readonly [string, number])[]) => {
    const sums = new Map<string, number>();
    for (const [name, count] of lines) sums.set(name, (sums.get(name) ?? 0) + count);
    return [...sums].sort(([a], [b]) => (a < b ? -1 : 1));
  };
  const listed = factOf(partCounts, frame).filter(({ kind }) => kind === "screw" || kind === "nut");
  const used = factOf(buildPlan, frame).flatMap(({ nuts, steps }) => [
    ...nuts.map(({ nut, count }) => [nut, count] as const),
    ...steps.flatMap(({ dropIn }) => dropIn.map(({ name, count }) => [name, count] as const)),
    ...steps.flatMap(({ tightens, fixes }) =>
      [...tightens, ...fixes].map(({ screw, count }) => [screw, count] as const),
    ),
  ]);
  return [tally(listed.map(({ name, count }) => [name, count] as const)), tally(used)] as const;
}

it.each(["first-bench", "potting-bench", "mixer-guard", "sack-cart", "tray-rack"])(
  "building %s uses up the screws and nuts that its list lays out",
  (name) => {
    const [list, used] = bothCounts(demo(name));
    expect(used).toEqual(list);
    expect(list.length).toBeGreaterThan(1);
  },
);

it.each([
  // Stock has a screw 30 mm long for 18 mm of plywood, none that fits 12 mm; one is named.
  ["plywood-18", undefined, "screw such as M8x30-button", true],
  ["plywood-12", undefined, "a screw and nut for plywood-12 on slot 8", false],
  ["plywood-12", "M8x25", "M8x25", true],
] as const)("a sheet of %s on faces, screw %s, is screwed on with what the list says", (sheet, screw, called, nuts) => {
  const [list, used] = bothCounts({
    ...portal(),
    panels: [
      {
        id: "back",
        sheet,
        held: "on-face",
        bars: ["leg-3", "leg-4"],
        on: "+y",
        screws: { pitch: 250, ...(screw ? { screw } : {}) },
      },
    ] as never,
  });
  expect(used).toEqual(list);
  const [bare] = bothCounts(portal());
  const more = (name: string): number => (new Map(list).get(name) ?? 0) - (new Map(bare).get(name) ?? 0);
  expect(more(called)).toBe(10);
  expect(more("nut-8-M8")).toBe(nuts ? 10 : 0);
});
