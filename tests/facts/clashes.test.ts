import { describe, expect, it } from "vitest";
import { clashes } from "../../src/facts/clashes.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, facingRails, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const found = (file: FrameFile) =>
  known(clashes, file).map(({ a, b, depth }) => [a.id, b.id, Math.round(depth * 1e7) / 1e4]);

describe("parts in each other's room", () => {
  // The upper bracket's leg on the post reaches down to 480 − 40 = 440, the lower's up to 520 − apart + 40: they meet at 120.
  it.each([
    [121, []],
    [120, []],
    [119, [["rail.from/1", "low.from/1", 1]]],
  ])("brackets of rails %i mm apart on one post", (apart, expected) => {
    expect(found(facingRails(apart))).toEqual(expected);
  });

  it("rails that lie on each other touch; 1 mm nearer they clash by that, their brackets by more", () => {
    const bare = (apart: number): FrameFile =>
      edited(facingRails(apart), (file) => {
        file.joints = [];
      });
    expect(found(bare(40))).toEqual([]);
    expect(found(bare(39))).toEqual([["rail", "low", 1]]);
  });

  it("an end screw's access hole, head and shank are meant to share room with the bars", () => {
    const file = edited(tee(), (base) => {
      base.kits = { corner: [{ connector: "end-screw-8" }] };
    });
    expect(found(file)).toEqual([]);
  });

  it("straight plates touch the faces they lie on; a bar 4 mm off the face dips 1 mm into one 5 mm thick", () => {
    const beside = (gap: number): FrameFile =>
      edited(tee(), (file) => {
        file.fastenings = [
          { id: "p", part: "plate-I-40", on: "+y", at: [0, 20, 500], turn: 90, holds: ["post", "rail"] },
        ];
        file.bars.push({ id: "near", profile: "40x40-8", from: [300, 40 + gap, 500], to: [-300, 40 + gap, 500] });
      });
    expect(found(beside(5))).toEqual([]);
    expect(found(beside(4))).toEqual([["near", "p/1", 1]]);
  });
});
