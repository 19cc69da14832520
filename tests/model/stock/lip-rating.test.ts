import { expect, test } from "vitest";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { lipRating } from "../../../src/model/stock/lip-rating.ts";
import { ratedTorque } from "../../../src/model/stock/rated-torque.ts";
import type { Profile, Screw } from "../../../src/model/stock/stock.ts";
import { si } from "../../../src/model/units/quantity.ts";
import { referenceCheck } from "../../references/load-reference.ts";

const GAMMA_M1 = 1.1;
const check = referenceCheck("bolts", "bolts.lip.nut20");
const input = (name: string) => Number(check.inputs[name]?.value);
const expected = check.expected.value as { shear_one_lip: number; pull_two_lips: number };
/** Opening 8 and cavity 16 as in S40: a nut 12 wide presses 5 mm off the middle, 3 mm from the root. */
const geometry = {
  opening: 8e-3,
  cavity: 16e-3,
  nutWidth: 12e-3,
  lip: input("t") * 1e-3,
  nutLength: input("L") * 1e-3,
  proof: input("fo") * 1e6,
};

test("bending of both lips is that of bolts.lip.nut20, over 1.10", () => {
  expect(lipRating(geometry)).toBeCloseTo(expected.pull_two_lips / GAMMA_M1, 6);
});

test("a nut close to the root is limited by the shear of bolts.lip.nut20", () => {
  expect(lipRating({ ...geometry, nutWidth: 22e-3 })).toBeCloseTo((2 * expected.shear_one_lip) / GAMMA_M1, 1);
});

test("rated torque brings a typical screw to 1.5 lip ratings, and never exceeds what the screw takes", () => {
  // bolts.lip.torque-limit stops at 0.7 of the pull: 0.7 × 1.1 = 0.77 ratings; by hand 8.96 × 1.5 / 0.77 = 17.45 N·m.
  const limit = Number(referenceCheck("bolts", "bolts.lip.torque-limit").expected.value);
  const screw = builtinStock().screws.get("M8x16") as Screw;
  const profile = {
    ...(builtinStock().profiles.get("40x40-8") as Profile),
    lipRating: si(lipRating(geometry), "force"),
  };
  expect(ratedTorque(screw, profile)).toBeCloseTo((limit * 1.5) / (0.7 * GAMMA_M1), 6);
  expect(ratedTorque({ ...screw, torque: si(5, "moment") }, profile)).toBe(5);
  expect(ratedTorque(screw, { ...profile, torques: new Map([["M8", si(18, "moment")]]) })).toBe(18);
});

test("rated torques are those of the trade (common practice): M8 slot 8 15 to 25, M6 slot 6 6 to 10, M5 slot 5 3 to 6 N·m", () => {
  const rated = (screw: string, profile: string) =>
    ratedTorque(builtinStock().screws.get(screw) as Screw, builtinStock().profiles.get(profile) as Profile);
  expect(rated("M8x16", "40x40-8")).toBeCloseTo(19.4, 1);
  expect(rated("M6x12", "30x30-6")).toBeCloseTo(7.74, 2);
  expect(rated("M5x8", "20x20-5")).toBeCloseTo(3.27, 2);
});

test("lip ratings of slot 8 lie near 5 kN light and 10 kN heavy (common practice)", () => {
  const rating = (name: string) => (builtinStock().profiles.get(name)?.lipRating ?? Number.NaN) / 1e3;
  expect(rating("40x40-8-light")).toBeGreaterThan(4.5);
  expect(rating("40x40-8-light")).toBeLessThan(rating("40x40-8"));
  expect(rating("40x40-8")).toBeLessThan(rating("40x40-8-heavy"));
  expect(rating("40x40-8-heavy")).toBeLessThan(11);
});
