import { describe, expect, it } from "vitest";
import { hanging } from "../../src/facts/hanging.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const hangs = (edit: (file: FrameFile) => void = () => {}) =>
  known(hanging, edited(tee(), edit)).map(({ joint, onto, rests, seatPossible }) => [
    joint.id,
    onto,
    rests,
    seatPossible,
  ]);
const postTo = (z: number) => (file: FrameFile) => {
  barOf(file, "post").to = [0, 0, z];
};

describe("joints that pass weight sideways", () => {
  it("a level rail on a post's side hangs; the post runs on far over it, so it could not end under it", () => {
    expect(hangs()).toEqual([["rail.from", "post", false, false]]);
  });

  it("a post that stops within the rail's depth over its top could: 520 + 40 mm", () => {
    expect(hangs(postTo(559))).toEqual([["rail.from", "post", false, true]]);
    expect(hangs(postTo(561))).toEqual([["rail.from", "post", false, false]]);
  });

  it("not where something stands on the post", () => {
    const crowned = (file: FrameFile): void => {
      postTo(540)(file);
      file.bars.push({ id: "crown", profile: "40x40-8", from: [-200, 0, 560], to: [200, 0, 560] });
    };
    expect(hangs(crowned)).toEqual([["rail.from", "post", false, false]]);
  });

  it("a prop under the rail near that end carries it: within a quarter of its 580 mm, level", () => {
    const propped = (x: number) => (file: FrameFile) => {
      file.bars.push({ id: "prop", profile: "40x40-8", from: [x, 0, 0], to: [x, 0, 480] });
    };
    // The joint's face is at x = 20: 145 mm on is 165.
    expect(hangs(propped(160))).toEqual([["rail.from", "post", true, false]]);
    expect(hangs(propped(170))).toEqual([["rail.from", "post", false, false]]);
  });

  it.each([
    [29, 1],
    [31, 0],
  ])("a rail that rises %i° counts while it is level within 30°: %i joint", (rise, count) => {
    const angle = (rise * Math.PI) / 180;
    const leaning = (file: FrameFile): void => {
      barOf(file, "rail").to = [600 * Math.cos(angle), 0, 500 + 600 * Math.sin(angle)];
    };
    expect(hangs(leaning)).toHaveLength(count);
  });

  it("a post that stands on a sill does not hang", () => {
    const file: FrameFile = {
      ...tee(),
      bars: [
        { id: "sill", profile: "40x40-8", from: [-300, 0, 0], to: [300, 0, 0] },
        { id: "rail", profile: "40x40-8", from: [0, 0, 0], to: [0, 0, 500] },
      ],
      kits: { corner: [{ connector: "inside-bracket-40", on: "+x" }] },
    };
    expect(known(hanging, file)).toEqual([]);
  });
});
