import { expect, it } from "vitest";
import { partCounts } from "../../src/facts/part-counts.ts";
import { shapedFits } from "../../src/facts/shaped-fits.ts";
import { cornersWithin } from "../../src/geometry/half-planes.ts";
import { edited } from "../rules/base-frames.ts";
import { pane, paneled } from "../rules/panel-frames.ts";
import { known } from "./known.ts";

const triangle = edited(paneled(), (file) => {
  file.bars.push({ id: "stay", profile: "40x40-8", from: [0, 0, 1000], to: [1000, 0, 0] });
  pane((panel) => {
    panel.edges = [{ bar: "left" }, { bar: "stay" }, { bar: "bottom" }];
  })(file);
});

/*
 * By hand, mm: floors of the slots lie 20 − 10.5 = 9.5 inside the middle lines x = 0, z = 0 and x + z = 1000. Between them a leg is
 * 1000 − 9.5·√2 − 2 · 9.5 = 967.565 long. Each edge is sawn in by 0.25 of spare room and 0.5 of what a saw is off by, and by what the sheet
 * outgrows the frame by: (65 − 23)e-6 · 15 of its distance from the middle, a radius 1000/3 − 9.5 at the legs and 1000/(3·√2) − 9.5 at the stay.
 */
const grown = (65e-6 - 23e-6) * 15;
const inset = (radius: number): number => 0.75 + ((radius - 0.25) * grown) / (1 + grown);
const [leg, stay] = [inset(1000 / 3 - 9.5), inset(1000 / (3 * Math.SQRT2) - 9.5)];
const LEG = 1000 - 9.5 * Math.SQRT2 - 2 * 9.5 - 2 * leg - Math.SQRT2 * stay;

it("a triangular sheet is told by its corners, along its longest edge, and weighs what lies between them", () => {
  const [fit] = known(shapedFits, triangle);
  expect(fit?.size).toEqual([expect.closeTo((LEG * Math.SQRT2) / 1000, 6), expect.closeTo(LEG / Math.SQRT2 / 1000, 6)]);
  const half = (LEG * Math.SQRT1_2) / 1000;
  expect(fit?.corners.map((at) => at.map((side) => Math.round(side * 1e6)))).toEqual(
    [
      [0, 0],
      [2 * half, 0],
      [half, half],
    ].map((at) => at.map((side) => Math.round(side * 1e6))),
  );
  const sheet = known(partCounts, triangle).find(({ kind }) => kind === "sheet");
  // 1200 kg/m³, polycarbonate (handbook value)
  expect(sheet?.mass).toBeCloseTo((1200 * 0.005 * (LEG / 1000) ** 2) / 2, 5);
});

it("half-planes that shut nothing in have no corners", () => {
  expect(
    cornersWithin([
      { out: [1, 0], reach: 1 },
      { out: [0, 1], reach: 1 },
    ]),
  ).toEqual([]);
  expect(
    cornersWithin([
      { out: [1, 0], reach: 1 },
      { out: [-1, 0], reach: -2 },
      { out: [0, 1], reach: 1 },
      { out: [0, -1], reach: 1 },
    ]),
  ).toEqual([]);
});
