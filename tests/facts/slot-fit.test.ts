import { describe, expect, it } from "vitest";
import { growthOf } from "../../src/facts/sheet-growth.ts";
import { largestSize, leastEngaged, roomLeft } from "../../src/facts/slot-fit.ts";
import type { Frame } from "../../src/model/frame.ts";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import { referenceCheck } from "../references/load-reference.ts";
import { one } from "./known.ts";

const polycarbonate = one(builtinStock().sheets.get("polycarbonate-5"), "sheet");
const C = 273.15;

function given(id: string): Record<string, number> {
  return Object.fromEntries(
    Object.entries(referenceCheck("plates", id).inputs).map(([k, { value }]) => [k, Number(value)]),
  );
}

const site = (cold: number, warm: number): Frame["site"] => ({
  place: "indoors",
  temperature: [cold + C, warm + C],
  vibration: "none",
  reach: "trained",
});

describe("a sheet between two slots", () => {
  it("plates.ex.panel-pc (derived): room, gap when hot, and what stays in when cold and pushed over", () => {
    const { expected, tolerance } = referenceCheck("plates", "plates.ex.panel-pc");
    const value = expected.value as Record<string, number>;
    const { clear = 0, depth = 0, panel = 0, dT_hot = 0, dT_cold = 0, alphaF = 0 } = given("plates.ex.panel-pc");
    const slots = { opening: clear, depths: [depth, depth] } as const;
    const growth = growthOf(polycarbonate, alphaF, site(20 - dT_cold, 20 + dT_hot));
    expect(roomLeft(slots, panel, 0, { most: 0, least: 0 })).toBeCloseTo(value.room ?? 0, 9);
    expect(panel * growth.most).toBeCloseTo(value.hot_growth ?? 0, 4);
    expect(Math.abs(roomLeft(slots, panel, 0, growth) - (value.hot_gap ?? 0))).toBeLessThan(tolerance.value);
    expect(Math.abs(leastEngaged(slots, 0, panel, 0, growth) - (value.cold_engagement_min ?? 0))).toBeLessThan(
      tolerance.value,
    );
  });

  it("plates.ex.panel-size (derived): the largest panel with 2 mm to spare when hot", () => {
    const { expected, tolerance } = referenceCheck("plates", "plates.ex.panel-size");
    const { clear = 0, depth = 0, spare = 0, dT_hot = 0, alphaF = 0 } = given("plates.ex.panel-size");
    const growth = growthOf(polycarbonate, alphaF, site(20, 20 + dT_hot));
    const size = largestSize({ opening: clear, depths: [depth, depth] }, spare, growth);
    expect(Math.abs(size - Number(expected.value))).toBeLessThan(tolerance.value);
  });

  it("plates.ex.pc-metre (published sheet data): 3.575 mm per metre over 55 K", () => {
    const { expected, tolerance } = referenceCheck("plates", "plates.ex.pc-metre");
    const { L = 0, dT = 0 } = given("plates.ex.pc-metre");
    const change = growthOf(polycarbonate, 0, site(20, 20 + dT)).most * L;
    expect(Math.abs(change / Number(expected.value) - 1)).toBeLessThan(tolerance.value);
  });

  it("a deeper slot opposite takes more of the sheet out of this one", () => {
    const still = { most: 0, least: 0 };
    const slots = { opening: 100, depths: [8, 12] } as const;
    expect(leastEngaged(slots, 0, 116, 1, still)).toBeCloseTo(115 - 100 - 12, 12);
    expect(leastEngaged(slots, 1, 116, 1, still)).toBeCloseTo(115 - 100 - 8, 12);
  });
});

describe("growth of a sheet against its frame", () => {
  it("with its sign: plywood, which moves less than aluminium, is tight in the cold", () => {
    const plywood = { ...one(builtinStock().sheets.get("plywood-12"), "sheet"), moisture: 0 };
    expect(growthOf(plywood, 23e-6, site(-10, 20)).most).toBeCloseTo((23e-6 - 5e-6) * 30, 12);
    expect(growthOf(plywood, 23e-6, site(-10, 20)).least).toBe(0);
  });

  it("is nought at the temperature drawings are read at (ISO 1:2022) and takes part in a range that leaves it out", () => {
    expect(growthOf(polycarbonate, 23e-6, site(20, 20))).toEqual({ most: 0, least: 0 });
    // A cold store is never as warm as the drawing says: the sheet is only ever small.
    const store = growthOf(polycarbonate, 23e-6, site(-25, -18));
    expect(store.most).toBe(0);
    expect(store.least).toBeCloseTo(42e-6 * 45, 12);
  });

  it("damp adds half of its whole movement either way outdoors, a quarter indoors", () => {
    const laminate = one(builtinStock().sheets.get("hpl-8"), "sheet");
    expect(growthOf(laminate, laminate.expansion, { ...site(0, 40), place: "outdoors" })).toEqual({
      most: 0.003,
      least: 0.003,
    });
    expect(growthOf(laminate, laminate.expansion, site(0, 40))).toEqual({ most: 0.0015, least: 0.0015 });
  });
});
