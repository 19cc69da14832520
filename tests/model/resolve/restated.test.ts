import { expect, test } from "vitest";
import { bench } from "./bench-text.ts";
import { frameOf } from "./read.ts";

/** Numbers that two unit systems round differently. */
function withoutLastDigits(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (key, one) => {
      if (key === "stock" || key === "units") return undefined;
      if (typeof one === "number") return Number(one.toPrecision(12));
      return one instanceof Map ? [...one] : one;
    }),
  );
}

const METRIC = {
  format: 1,
  title: "Bench",
  units: "mm-N-kg",
  bars: [
    {
      id: "a",
      profile: "40x40-8",
      from: [0, 0, 25.4],
      to: [1016, 0, 25.4],
      holes: [{ at: 254, on: "+z", diameter: 6.35 }],
    },
    { id: "b", profile: "40x40-8", from: [0, 508, 25.4], to: [1016, 508, 25.4], roll: 30 },
  ],
  joints: [{ bars: ["a/to"], by: [{ connector: "end-screw-M8", torque: "100 lbf·in", shift: 3.175 }] }],
  panels: [
    { id: "top", sheet: "plywood-18", held: "laid", bars: ["a", "b"], overhang: [12.7, 0, 0, 0], size: [1016, 508] },
  ],
  masses: [{ id: "vice", mass: "50 lb", centre: [508, 254, 254], on: ["top"], shakes: 25 }],
  loads: [
    { case: "c", on: "top", pressure: "0.5 psi" },
    { case: "c", on: "a", force: "50 lbf", at: 254 },
    { case: "c", on: "b", line: "2 lbf/in", part: [0, 254] },
    { case: "c", on: "b", moment: "120 lbf·in", direction: "+y" },
  ],
  site: { temperature: [0, 35] },
  floor: { z: -25.4, slope: "1:100", uneven: 2.54 },
};

const INCHES = {
  format: 1,
  title: "Bench",
  units: "in-lbf-lb",
  bars: [
    { id: "a", profile: "40x40-8", from: [0, 0, 1], to: [40, 0, 1], holes: [{ at: 10, on: "+z", diameter: "1/4 in" }] },
    { id: "b", profile: "40x40-8", from: [0, 20, 1], to: [40, 20, 1], roll: "30 deg" },
  ],
  joints: [{ bars: ["a/to"], by: [{ connector: "end-screw-M8", torque: 100, shift: "1/8 in" }] }],
  panels: [
    { id: "top", sheet: "plywood-18", held: "laid", bars: ["a", "b"], overhang: [0.5, 0, 0, 0], size: [40, 20] },
  ],
  masses: [{ id: "vice", mass: 50, centre: [20, 10, 10], on: ["top"], shakes: "1500 rpm" }],
  loads: [
    { case: "c", on: "top", pressure: 0.5 },
    { case: "c", on: "a", force: 50, at: 10 },
    { case: "c", on: "b", line: 2, part: [0, 10] },
    { case: "c", on: "b", moment: 120, direction: "+y" },
  ],
  site: { temperature: [32, 95] },
  floor: { z: -1, slope: "0.57293869768 deg", uneven: 0.1 },
};

test("one frame in two unit systems resolves to the same SI values", () => {
  const metric = withoutLastDigits({ ...frameOf(METRIC), floor: undefined });
  expect(withoutLastDigits({ ...frameOf(INCHES), floor: undefined })).toEqual(metric);
  const [a, b] = [frameOf(METRIC).floor, frameOf(INCHES).floor];
  expect(b.slope).toBeCloseTo(a.slope, 12);
  expect([b.z, b.uneven]).toEqual([a.z, a.uneven]);
  expect(a.slope).toBe(Math.atan(0.01));
});

test("values that can be worked out by hand, NIST SP 811 factors", () => {
  const frame = frameOf(INCHES);
  expect(frame.bars[0]?.to).toEqual([1.016, 0, 0.0254]);
  expect(frame.loads[0]?.amount.value).toBeCloseTo(3447.378646584, 6);
  expect(frame.loads[1]?.amount.value).toBeCloseTo(222.411080763, 8);
  expect(frame.loads[2]?.amount.value).toBeCloseTo(350.253670497, 8);
  expect(frame.loads[3]?.amount.value).toBeCloseTo(13.558179483, 8);
  expect(frame.masses[0]?.mass).toBeCloseTo(22.6796185, 10);
  expect(frame.joints[0]?.connectors[0]?.torque).toBeCloseTo(11.298482903, 8);
  expect(frame.site.temperature).toEqual([273.15, 308.15]);
});

/** The value with every list of parts the other way round, and the keys of every object. */
function reordered(value: unknown, key = ""): unknown {
  const lists = new Set([
    "bars",
    "joints",
    "fastenings",
    "ties",
    "pivots",
    "panels",
    "doors",
    "stands",
    "masses",
    "zones",
    "groups",
  ]);
  if (Array.isArray(value)) {
    const inner = value.map((one) => reordered(one));
    return lists.has(key) && typeof value[0] === "object" ? inner.reverse() : inner;
  }
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, one]) => [name, reordered(one, name)]),
  );
}

function sorted(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (key, one) => {
      if (key === "stock") return undefined;
      if (!Array.isArray(one) || one[0]?.ref === undefined || key === "connectors") return one;
      return [...one].sort((a, b) => (a.ref.id < b.ref.id ? -1 : 1));
    }),
  );
}

test("the order of keys and of parts in a file means nothing", () => {
  const file: unknown = JSON.parse(bench);
  expect(sorted(frameOf(reordered(file) as object))).toEqual(sorted(frameOf(bench)));
});
