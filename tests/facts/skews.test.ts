import { expect, it } from "vitest";
import { skews } from "../../src/facts/skews.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { known } from "./known.ts";

const degrees = (edit: (file: FrameFile) => void = () => {}) =>
  known(skews, edited(tee(), edit)).map(({ lean, twist }) => [lean, twist].map((angle) => (angle * 180) / Math.PI));
const close = (...angles: readonly number[]) => [angles.map((angle) => expect.closeTo(angle, 6))];

/** The rail leaves the post's face at this angle from its square, in the plane of x and y. */
const yawed = (angle: number) => (file: FrameFile) => {
  const rad = (angle * Math.PI) / 180;
  barOf(file, "rail").to = [600 * Math.cos(rad), 600 * Math.sin(rad), 500];
};
const rolled = (roll: number) => (file: FrameFile) => {
  barOf(file, "rail").roll = roll;
};

it("bars square to each other neither lean nor twist", () => {
  expect(degrees()).toEqual(close(0, 0));
});

it("a rail 3° out of square leans by 3°", () => {
  expect(degrees(yawed(3))).toEqual(close(3, 0));
});

it.each([
  [2, 2],
  [-2, 2],
  [90, 0],
  [88, 2],
  [45, 45],
])("a rail rolled by %i° is twisted by %i°: to the nearest quarter turn", (roll, twist) => {
  // At 45° no bracket finds its face, yet the twist is known.
  expect(degrees(rolled(roll))).toEqual(close(0, twist));
});

it("a joint without connectors has none to be out of line", () => {
  expect(
    degrees((file) => {
      yawed(3)(file);
      file.joints = [];
    }),
  ).toEqual([]);
});
