import { describe, expect, it } from "vitest";
import { boredHoles } from "../../src/facts/bored-holes.ts";
import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, kitItem, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

const drilled = (...holes: readonly NonNullable<Bar["holes"]>[number][]): FrameFile =>
  edited(tee(), (file) => {
    barOf(file, "post").holes = [...holes];
  });
const endScrewed = (edit: (file: FrameFile) => void = () => {}): FrameFile =>
  edited(tee(), (file) => {
    Object.assign(kitItem(file), { connector: "end-screw-8" });
    delete kitItem(file).on;
    edit(file);
  });

describe("holes and shanks in bars", () => {
  it("a hole drilled by hand goes to the middle of the bar, or through", () => {
    const { all, edges } = known(
      boredHoles,
      drilled({ at: 100, on: "+x", diameter: 10, through: false }, { at: 300, on: "+y", diameter: 8 }),
    );
    expect(all.map(({ line }) => line)).toEqual([
      { from: near([20, 0, 100]), to: near([0, 0, 100]) },
      { from: near([0, 20, 300]), to: near([0, -20, 300]) },
    ]);
    expect(all.map(({ radius }) => Math.round(radius * 1e4) / 10)).toEqual([5, 4]);
    expect(edges.map(({ toEnd }) => Math.round(toEnd * 1e4) / 10)).toEqual([100, 300]);
  });

  it("leave metal between them: 12 mm apart, 5 + 4 mm of radius", () => {
    const { pairs } = known(
      boredHoles,
      drilled({ at: 100, on: "+x", diameter: 10, through: true }, { at: 112, on: "+y", diameter: 8, through: true }),
    );
    expect(pairs.map(({ metal }) => metal)).toEqual([expect.closeTo(0.003, 9)]);
  });

  it("an end screw is an access hole of 7 mm across the post and a shank of 21 mm in the rail", () => {
    const { all, pairs, edges } = known(boredHoles, endScrewed());
    expect(all.map(({ bar, what }) => [bar, what])).toEqual([
      ["post", "access hole"],
      ["rail", "end screw"],
    ]);
    // They belong together, and lie in two bars; only the access hole is drilled.
    expect(pairs).toEqual([]);
    expect(edges.map(({ hole, toEnd }) => [hole.what, toEnd])).toEqual([["access hole", expect.closeTo(0.5, 12)]]);
  });

  it("a foot's stem, 20 mm long, ends flat under a hole across the post", () => {
    const standing = (z: number) =>
      known(
        boredHoles,
        endScrewed((file) => {
          file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
          for (const end of ["from", "to"] as const) one(barOf(file, "rail")[end])[2] = z;
        }),
      );
    const { all, pairs } = standing(30);
    expect(all.find(({ what }) => what === "stem")?.line).toEqual({ from: near([0, 0, 0]), to: near([0, 0, 20]) });
    // 30 − 20 − 3.5 mm.
    expect(pairs.map(({ metal }) => metal)).toEqual([expect.closeTo(0.0065, 9)]);
    expect(standing(20).pairs[0]?.metal).toBeLessThan(0);
  });

  it("the key hole of an end fastener is no hole whose distance from the end is in question", () => {
    const file = edited(tee(), (base) => {
      Object.assign(kitItem(base), { connector: "end-fastener-8", on: "above" });
    });
    expect(known(boredHoles, file).all.map(({ what }) => what)).toEqual(["key hole"]);
    expect(known(boredHoles, file).edges).toEqual([]);
  });
});
