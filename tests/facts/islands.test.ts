import { expect, it } from "vitest";
import { islands } from "../../src/facts/islands.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const sets = (edit: (file: FrameFile) => void) => known(islands, edited(tee(), edit));

it("joined bars hang together, in the order of the file", () => {
  expect(sets(() => {})).toEqual([["post", "rail"]]);
});

it("bars that only touch do not; the largest set comes first", () => {
  expect(
    sets((file) => {
      file.bars.unshift({ id: "alone", profile: "40x40-8", from: [0, 40, 0], to: [0, 40, 1000] });
    }),
  ).toEqual([["post", "rail"], ["alone"]]);
});

it("a plate without a screw in a bar does not hold it", () => {
  const plate = (y: number) =>
    sets((file) => {
      file.joints = [];
      file.fastenings = [{ part: "plate-T-40", on: "+y", at: [0, 20, 500], turn: 90, holds: ["post", "rail"] }];
      barOf(file, "rail").from = [0, y, 500];
      barOf(file, "rail").to = [600, y, 500];
    });
  expect(plate(0)).toEqual([["post", "rail"]]);
  // The rail's face lies 1 mm behind the plate.
  expect(plate(-1)).toEqual([["post"], ["rail"]]);
});
