import { describe, expect, it } from "vitest";
import { cutList } from "../../src/facts/cut-list.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { cutWords, operationWords } from "../../src/report/cuts/operation-words.ts";
import { barOf, edited, kitItem, tee } from "../rules/base-frames.ts";
import { known, one } from "./known.ts";

const mm = (m: number): number => Math.round(m * 1e7) / 1e4;
const list = (edit: (file: FrameFile) => void = () => {}) => known(cutList, edited(tee(), edit));
const lengths = (edit?: (file: FrameFile) => void) => list(edit).map(({ length, bars }) => [mm(length), ...bars]);
const work = (bar: string, edit: (file: FrameFile) => void) =>
  one(list(edit).find(({ bars }) => bars.includes(bar))).operations;

describe("cut list", () => {
  it("longest first, as cut: the rail ends at the post's face", () => {
    expect(lengths()).toEqual([
      [1000, "post"],
      [580, "rail"],
    ]);
  });

  it("bars alike are one line; a hundredth of a millimetre makes no other, a tenth does", () => {
    const twin = (length: number) => (file: FrameFile) => {
      file.bars.push({ id: "twin", profile: "40x40-8", from: [0, 200, 0], to: [0, 200, length] });
    };
    expect(lengths(twin(1000.004))).toEqual([
      [1000, "post", "twin"],
      [580, "rail"],
    ]);
    expect(lengths(twin(1000.1))[0]).toEqual([1000.1, "twin"]);
  });

  it("lists profiles by name", () => {
    expect(
      list((file) => {
        barOf(file, "rail").profile = "30x30-6";
      }).map(({ profile }) => profile.name),
    ).toEqual(["30x30-6", "40x40-8"]);
  });

  it("a mitre at a corner of 90° is cut at 45°, long point to long point", () => {
    const mitred = (file: FrameFile): void => {
      file.joints = [];
      file.bars = [
        { id: "a", profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ends: { from: { mitre: "b" } } },
        { id: "b", profile: "40x40-8", from: [0, 0, 0], to: [0, 300, 0], ends: { from: { mitre: "a" } } },
      ];
    };
    expect(lengths(mitred)).toEqual([
      [520, "a"],
      [320, "b"],
    ]);
    for (const { operations } of list(mitred))
      expect(operations).toEqual([
        { what: "angled cut", at: "from", size: expect.closeTo(Math.PI / 4, 12), words: "" },
      ]);
  });

  it("a mitre at a corner of 60° is cut 60° off square: 90° − 60° / 2", () => {
    const mitred = (file: FrameFile): void => {
      const to: [number, number, number] = [150, 150 * Math.sqrt(3), 0];
      file.joints = [];
      file.bars = [
        { id: "a", profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ends: { from: { mitre: "b" } } },
        { id: "b", profile: "40x40-8", from: [0, 0, 0], to, ends: { from: { mitre: "a" } } },
      ];
    };
    for (const { operations } of list(mitred)) expect(operations[0]?.size).toBeCloseTo(Math.PI / 3, 9);
  });

  // A bar of 500 mm of which both ends are cut 45° about y, the from end turned the other way or the same way.
  it.each([
    ["parallel", 45, "+y", 540, "parallel (parallelogram)"],
    ["mirrored", -45, "+y", 540, "mirrored (trapezium)"],
    ["askew", 45, "+z", 540, "askew to each other: see the drawing"],
  ] as const)("tells cuts that are %s apart", (pair, angle, about, length, words) => {
    const [line] = list((file) => {
      file.joints = [];
      const ends = { from: { angle: 45, about: "+y" as const }, to: { angle, about } };
      file.bars = [{ id: "a", profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ends }];
    });
    expect([mm(line?.length ?? 0), line?.pair]).toEqual([length, pair]);
    expect(line && cutWords(line, "mm-N-kg")).toBe(`over the long points, both ends 45° out of square, ${words}`);
    expect(line && operationWords(line.operations, "mm-N-kg")).toBe("");
  });

  it("says at which end a single angled cut is, and that the length counts to its long point", () => {
    const [line] = list((file) => {
      file.joints = [];
      file.bars = [
        { id: "a", profile: "40x40-8", from: [0, 0, 0], to: [500, 0, 0], ends: { to: { angle: 45, about: "+y" } } },
      ];
    });
    expect([mm(line?.length ?? 0), line?.pair]).toEqual([520, undefined]);
    expect(line && cutWords(line, "mm-N-kg")).toBe("over the long point, 45° out of square at to");
  });

  it("an end screw: a tap in the end of the rail, a hole from the far face of the post", () => {
    const screwed = (file: FrameFile): void => {
      Object.assign(kitItem(file), { connector: "end-screw-8" });
      delete kitItem(file).on;
    };
    expect(work("rail", screwed)).toEqual([{ what: "tap", at: "from", size: 0.008, words: "M8" }]);
    // The post's face C looks away from the rail.
    const [hole] = work("post", screwed);
    expect(hole).toMatchObject({ what: "hole", words: "access hole", face: "C", size: expect.closeTo(0.007, 12) });
    expect(hole?.at).toBeCloseTo(0.5, 9);
  });

  it("an end fastener: the hole for its key, 9 mm wide, 15 mm from the end", () => {
    const [hole] = work("rail", (file) => {
      Object.assign(kitItem(file), { connector: "end-fastener-8", on: "above" });
    });
    expect(hole).toMatchObject({ what: "hole", words: "key hole", face: "A", size: expect.closeTo(0.009, 12) });
    expect(hole?.at).toBeCloseTo(0.015, 9);
  });

  it("a foot asks for a tap of its thread in the end it is under", () => {
    const standing = (file: FrameFile): void => {
      file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
    };
    expect(work("post", standing)).toMatchObject([{ what: "tap", at: "from", words: "M8" }]);
  });

  it("holes are counted from the bar as cut, in the order along it, after the work on its ends", () => {
    const drilled = (file: FrameFile): void => {
      barOf(file, "rail").holes = [
        { at: 400, on: "above", diameter: 9 },
        { at: 100, on: "+y", diameter: 5.5 },
      ];
      barOf(file, "rail").ends = { to: { angle: 10, about: "+y" } };
    };
    expect(
      work("rail", drilled).map(({ what, at, face }) => [what, typeof at === "number" ? mm(at) : at, face]),
    ).toEqual([
      ["angled cut", "to", undefined],
      ["hole", 100, "D"],
      ["hole", 400, "A"],
    ]);
  });

  it("a bar of which the cuts leave nothing is not listed", () => {
    const swallowed = (file: FrameFile): void => {
      file.joints = [];
      barOf(file, "post").profile = "80x80-8";
      Object.assign(barOf(file, "rail"), { profile: "20x20-5", from: [-10, 0, 500], to: [10, 0, 500] });
    };
    expect(lengths(swallowed)).toEqual([[1000, "post"]]);
  });
});
