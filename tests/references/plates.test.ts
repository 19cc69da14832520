import { describe, expect, it } from "vitest";
import { builtinStock } from "../../src/model/stock/builtin-stock.ts";
import type { Sheet } from "../../src/model/stock/stock.ts";
import { registerFamily } from "./family-register.ts";
import { referenceCheck } from "./load-reference.ts";

registerFamily(
  "plates",
  {
    "mechanics/plates.test.ts": [
      "plates.ss.uniform.",
      "plates.ss.point.",
      "plates.roark.ss.",
      "plates.ex.pc-push",
      "plates.ex.al-shelf",
      "plates.ex.two-edges",
    ],
    "facts/slot-fit.test.ts": ["plates.ex.panel-pc", "plates.ex.panel-size", "plates.ex.pc-metre"],
    "references/plates.test.ts": [
      "plates.mat.PC",
      "plates.mat.PMMA",
      "plates.mat.HPL",
      "plates.mat.Al-sheet",
      "plates.mat.PMMA.humidity",
    ],
  },
  { "slots, gaskets and faces let an edge turn: no edge of a panel is taken as clamped": ["plates.clamped."] },
);

const stock = builtinStock();

function sheet(name: string): Sheet {
  const found = stock.sheets.get(name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
}

function value(id: string): Record<string, number> {
  return referenceCheck("plates", id).expected.value as Record<string, number>;
}

describe("built-in sheets have the values of general sheet data", () => {
  it.each([
    ["plates.mat.PC", "polycarbonate-5", "yield"],
    ["plates.mat.PMMA", "acrylic-5", "tensile"],
  ] as const)("%s (%s)", (id, name, strength) => {
    const expected = value(id);
    const { elasticModulus, poisson, expansion, density, ...rest } = sheet(name);
    expect(elasticModulus / 1e6).toBe(expected.E);
    expect(poisson).toBe(expected.nu);
    expect(expansion).toBe(expected.alpha_per_K);
    expect(density).toBe(expected.density);
    expect(rest.strength / 1e6).toBe(expected[strength]);
  });

  it("plates.mat.HPL: EN 438-4 compact laminate, 5 mm and thicker", () => {
    const expected = value("plates.mat.HPL");
    const { elasticModulus, strength, density, moisture } = sheet("hpl-5");
    expect(elasticModulus / 1e6).toBe(expected.E_min);
    expect(strength / 1e6).toBe(expected.flexural_min);
    expect(density).toBe(expected.density_min);
    expect(moisture * 100).toBeCloseTo(expected.move_trans_pct ?? 0, 12);
  });

  it("plates.mat.Al-sheet: EN 1999-1-1 cl. 3.2.5", () => {
    const expected = value("plates.mat.Al-sheet");
    const { elasticModulus, poisson, expansion, density } = sheet("aluminium-3");
    expect(elasticModulus / 1e6).toBe(expected.E);
    expect(poisson).toBe(expected.nu);
    expect(expansion).toBe(expected.alpha_per_K);
    expect(density).toBe(expected.density);
  });

  it("plates.mat.PMMA.humidity: acrylic grows 0.6 % from dry to 100 % relative humidity", () => {
    expect(sheet("acrylic-5").moisture * 100).toBeCloseTo(value("plates.mat.PMMA.humidity")["100"] ?? 0, 12);
  });
});
