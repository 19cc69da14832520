import { expect, it } from "vitest";
import { connections } from "../../src/facts/connections.ts";
import type { FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { edited, tee } from "../rules/base-frames.ts";
import { known, near, one } from "./known.ts";

/** A strip on top of the rail, from x = 20 to 600. */
const strip = (file: FrameFile): void => {
  file.bars.push({
    id: "strip",
    profile: "40x40-8",
    from: [20, 0, 540],
    to: [600, 0, 540],
    ends: { both: { cut: "as-drawn" } },
  });
};

it("a bracket holds each of its bars by the screws that sit in that bar's slot", () => {
  const { all, of } = known(connections, tee());
  expect(all).toHaveLength(1);
  expect(all[0]).toMatchObject({ joint: { id: "rail.from" }, declaredFree: false });
  expect(all[0]?.holds.map(({ bar, screws, lugs }) => [bar, screws.length, lugs])).toEqual([
    ["rail", 1, false],
    ["post", 1, false],
  ]);
  expect(of("post")).toEqual(all);
  expect(of("nobody")).toEqual([]);
});

it("a tie holds both bars by one screw at each place, across the faces that touch", () => {
  const file = edited(tee(), (base) => {
    strip(base);
    base.ties = [{ id: "tie", bars: ["strip", "rail"], part: "side-tie-8", at: [60, 500] }];
  });
  const tie = one(known(connections, file).of("strip")[0]);
  expect(tie).toMatchObject({ joint: { id: "tie" }, declaredFree: false });
  for (const hold of tie.holds) {
    // Counted along the strip from its first point at x = 20.
    expect(hold.screws.map((screw) => screw.point)).toEqual([near([80, 0, 540]), near([520, 0, 540])]);
    for (const screw of hold.screws) expect(Math.abs(screw.axis[2])).toBeCloseTo(1, 12);
  }
});

it("a pivot is meant to turn", () => {
  const file = edited(tee(), (base) => {
    strip(base);
    base.pivots = [{ id: "pin", bars: ["strip", "rail"], part: "pivot-40", at: [60, -20, 520], axis: "+y" }];
  });
  const pin = one(known(connections, file).of("strip")[0]);
  expect(pin.declaredFree).toBe(true);
  expect(pin.holds[0]?.screws).toEqual([{ point: near([60, -20, 520]), axis: near([0, 1000, 0]) }]);
});

it("a sheet screwed on holds the bars in its plane by screws no further apart than the pitch", () => {
  const file = edited(tee(), (base) => {
    strip(base);
    base.panels = [
      { id: "top", sheet: "plywood-12", held: "on-face", bars: ["strip", "rail"], on: "+z", screws: { pitch: 250 } },
    ];
  });
  const sheet = known(connections, file).all.find(({ by }) => by.id === "top");
  // 580 mm by 250: three spaces of 193 mm, four screws. The rail lies 40 mm under the sheet.
  expect(sheet?.holds.map(({ bar, screws }) => [bar, screws.length])).toEqual([["strip", 4]]);
  const points = sheet?.holds[0]?.screws.map((screw) => Math.round(screw.point[0] * 1e4) / 10);
  expect(points).toEqual([20, 213.3, 406.7, 600]);
});

it("a sheet that is only laid on holds nothing", () => {
  const file = edited(tee(), (base) => {
    base.panels = [{ id: "top", sheet: "plywood-12", held: "laid", bars: ["rail"], on: "+z" }];
  });
  expect(known(connections, file).all.map(({ by }) => by.id)).toEqual(["rail.from/1"]);
});
