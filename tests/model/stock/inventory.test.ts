import { expect, test } from "vitest";
import { builtinStock } from "../../../src/model/stock/builtin-stock.ts";
import { referenceCheck } from "../../references/load-reference.ts";
import { areaOf, secondMomentOf } from "./measure.ts";

const stock = builtinStock();

/** Least and most kg/m of ordinary profiles; common practice. */
const MASSES: readonly (readonly [name: string, low: number, high: number])[] = [
  ["20x20-5", 0.4, 0.6],
  ["30x30-6", 0.8, 1.1],
  ["30x30-6-light", 0.7, 0.95],
  ["40x40-8", 1.6, 2.2],
  ["40x40-8-light", 1.2, 1.6],
  ["40x40-8-heavy", 2.1, 2.6],
  ["40x80-8", 2.8, 3.8],
  ["80x80-8", 5, 7],
  ["45x45-10", 1.6, 2.5],
  ["45x45-10-light", 1.3, 1.8],
  ["1x1-1/4", 0.6, 0.9],
  ["1.5x1.5-5/16", 1.5, 2.1],
  ["1.5x1.5-5/16-light", 1.1, 1.6],
];

test.each(MASSES)("%s weighs between %d and %d kg/m (common practice)", (name, low, high) => {
  const profile = stock.profiles.get(name);
  if (profile === undefined) throw new Error(`no profile ${name}`);
  const mass = areaOf(profile.region) * (stock.materials.get(profile.material)?.density ?? Number.NaN);
  expect(mass).toBeGreaterThanOrEqual(low);
  expect(mass).toBeLessThanOrEqual(high);
});

test.each([
  ["40x40-8", 8, 12],
  ["40x40-8-light", 6.5, 9],
  ["40x80-8", 60, 85],
  ["80x80-8", 110, 160],
])("the second moment of %s about z lies between %d and %d cm⁴ (common practice)", (name, low, high) => {
  const region = stock.profiles.get(name)?.region ?? { outer: [], holes: [] };
  expect(secondMomentOf(region) / 1e-8).toBeGreaterThan(low);
  expect(secondMomentOf(region) / 1e-8).toBeLessThan(high);
});

test("a name says width x height - slot size", () => {
  for (const profile of stock.profiles.values()) {
    const [, width, height, slotSize] = /^([\d.]+)x([\d.]+)-([\d/]+)/.exec(profile.name) ?? [];
    const unit = profile.slotSize.includes("/") ? 0.0254 : 1e-3;
    expect(profile.width).toBeCloseTo(Number(width) * unit, 9);
    expect(profile.height).toBeCloseTo(Number(height) * unit, 9);
    expect(profile.slotSize).toBe(slotSize);
  }
});

test("every profile has a cap, and a foot fits the bores of every pitch", () => {
  const capped = new Set([...stock.caps.values()].flatMap(({ profiles }) => profiles));
  const stems = new Set([...stock.stands.values()].flatMap(({ mount }) => (mount.by === "stem" ? [mount.thread] : [])));
  for (const profile of stock.profiles.values()) {
    expect(capped).toContain(profile.name);
    for (const { thread } of profile.bores) expect(stems).toContain(thread);
  }
});

test("a stem goes in by two diameters at least (common practice)", () => {
  for (const { name, mount } of stock.stands.values()) {
    if (mount.by !== "stem") continue;
    const diameter = [...stock.screws.values()].find(({ thread }) => thread === mount.thread)?.diameter ?? Number.NaN;
    expect(mount.engagement, name).toBeGreaterThanOrEqual(2 * diameter - 1e-9);
  }
});

test("a gasket leaves depth in the slot and takes only sheets that pass the opening; every slot size has one", () => {
  const sizes = new Set<string>();
  for (const gasket of stock.gaskets.values()) {
    sizes.add(gasket.slotSize);
    for (const { slots } of [...stock.profiles.values()].filter(({ slotSize }) => slotSize === gasket.slotSize)) {
      for (const slot of slots.filter(({ closed }) => !closed)) {
        expect(gasket.sheet[1]).toBeLessThan(slot.opening);
        expect(gasket.depth).toBeLessThan(slot.depth);
        expect(gasket.depth).toBeGreaterThan(slot.lip);
      }
    }
    const taken = [...stock.sheets.values()].filter(
      ({ thickness }) => thickness >= gasket.sheet[0] - 1e-9 && thickness <= gasket.sheet[1] + 1e-9,
    );
    expect(taken.length, gasket.name).toBeGreaterThan(0);
  }
  expect(
    [...new Set([...stock.profiles.values()].map(({ slotSize }) => slotSize))].filter((size) => !sizes.has(size)),
  ).toEqual([]);
});

const ALLOYS = {
  "6060-T66": "materials.en.6060-T66.ep.t3-25",
  "6060-T6": "materials.en.6060-T6",
  "6063-T66": "materials.en.6063-T66.ep.t0-10",
  "6005A-T6": "materials.en.6005A-T6.hollow.t5-15",
};

test.each(Object.entries(ALLOYS))(
  "%s has the strengths of %s and the constants of materials.en.constants",
  (name, id) => {
    const strength = referenceCheck("materials", id).expected.value as {
      fo: number;
      fu: number;
      buckling_class: string;
    };
    const constants = referenceCheck("materials", "materials.en.constants").expected.value as Record<string, number>;
    const material = stock.materials.get(name);
    expect(material?.proof).toBeCloseTo(strength.fo * 1e6, 0);
    expect(material?.ultimate).toBeCloseTo(strength.fu * 1e6, 0);
    expect(material?.bucklingClass).toBe(strength.buckling_class);
    expect(material?.elasticModulus).toBeCloseTo((constants.E ?? 0) * 1e6, 0);
    expect(material?.shearModulus).toBeCloseTo((constants.G ?? 0) * 1e6, 0);
    expect(material?.density).toBe(constants.density_kg_m3);
    expect(material?.expansion).toBe(constants.alpha_per_K);
  },
);

test("6105-T5 has the strengths of materials.astm.6105-T5 and the moduli of materials.astm.E", () => {
  const KSI = 6894757.293168;
  const { Ftu = 0, Fty = 0 } = referenceCheck("materials", "materials.astm.6105-T5").expected.value as Record<
    string,
    number
  >;
  const { E = 0, G = 0 } = referenceCheck("materials", "materials.astm.E").expected.value as Record<string, number>;
  const material = stock.materials.get("6105-T5");
  expect(material?.proof).toBeCloseTo(Fty * KSI, 0);
  expect(material?.ultimate).toBeCloseTo(Ftu * KSI, 0);
  expect(material?.elasticModulus).toBeCloseTo(E * KSI, 0);
  expect(material?.shearModulus).toBeCloseTo(G * KSI, 0);
});

test.each([
  ["polycarbonate-5", "plates.mat.PC", "E"],
  ["acrylic-5", "plates.mat.PMMA", "E"],
  ["hpl-6", "plates.mat.HPL", "E_min"],
  ["aluminium-3", "plates.mat.Al-sheet", "E"],
])("%s has the modulus of %s", (name, id, key) => {
  const values = referenceCheck("plates", id).expected.value as Record<string, number>;
  const sheet = stock.sheets.get(name);
  expect(sheet?.elasticModulus).toBeCloseTo((values[key] ?? 0) * 1e6, 0);
  expect(sheet?.density).toBe(values.density ?? values.density_min);
  if (values.nu !== undefined) expect(sheet?.poisson).toBe(values.nu);
  if (values.alpha_per_K !== undefined) expect(sheet?.expansion).toBe(values.alpha_per_K);
});
