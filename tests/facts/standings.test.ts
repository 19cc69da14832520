import { expect, it } from "vitest";
import { standDirection, standings } from "../../src/facts/standings.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barOf, edited, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

const standing = (edit: (file: FrameFile) => void) =>
  known(
    standings,
    edited(tee(), (file) => {
      file.stands = [{ part: "foot-40-M8", bars: ["post"] }];
      edit(file);
    }),
  );

it("a foot is under the lower end, whichever way the bar was drawn", () => {
  const up = standing(() => {});
  expect(up.all.map(({ end }) => end)).toEqual(["from"]);
  expect(one(up.all[0]).top).toEqual(near([0, 0, 0]));
  expect(standDirection(one(up.all[0]))).toEqual(near([0, 0, -1000]));
  const down = standing((file) => {
    Object.assign(barOf(file, "post"), { from: [0, 0, 1000], to: [0, 0, 50] });
  });
  expect(down.all.map(({ end }) => end)).toEqual(["to"]);
  expect(one(down.all[0]).top).toEqual(near([0, 0, 50]));
  expect(standDirection(one(down.all[0]))).toEqual(near([0, 0, -1000]));
  expect(down.onEnd("post", "to")).toEqual(down.all);
  expect(down.onEnd("post", "from")).toEqual([]);
});

it("a foot covers a disc of its collar, 38 mm; a plate of 77 mm square the circle round it", () => {
  expect(standing(() => {}).all[0]?.cover).toBeCloseTo(0.038, 12);
  const plate = standing((file) => {
    file.stands = [{ part: "caster-75-plate", bars: ["post"] }];
  });
  expect(plate.all[0]?.cover).toBeCloseTo(0.077 * Math.SQRT2, 12);
});
