import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { UNITS } from "../../../src/model/units/factors.ts";
import { formatNumber, formatPair, formatQuantity } from "../../../src/model/units/format-quantity.ts";
import type { Quantity } from "../../../src/model/units/quantity.ts";
import { readQuantity } from "../../../src/model/units/read-quantity.ts";
import type { UnitSystem } from "../../../src/model/units/unit-system.ts";

test.each<[number, Quantity, string, string]>([
  [0.0081, "length", "8.1 mm", "0.319 in"],
  [1.5, "length", "1500 mm", "59.055 in"],
  [0.04, "length", "40 mm", "1.575 in"],
  [-0.00001, "length", "0 mm", "0 in"],
  [0.001234, "area", "1234 mm²", "1.91 in²"],
  [9.45e-8, "secondMoment", "9.45 cm⁴", "0.227 in⁴"],
  [Math.PI / 180, "angle", "1°", "1°"],
  [250, "force", "250 N", "56.2 lbf"],
  [1043.7, "force", "1.04 kN", "235 lbf"],
  [0, "force", "0 N", "0 lbf"],
  [12, "moment", "12 N·m", "106 lbf·in"],
  [8000, "rotationalStiffness", "8 kN·m/rad", "70806 lbf·in/rad"],
  [195e6, "stress", "195 MPa", "28.3 ksi"],
  [69.6e6, "stress", "69.6 MPa", "10.1 ksi"],
  [10e6, "stress", "10 MPa", "1450 psi"],
  [1500, "pressure", "1.5 kPa", "0.218 psi"],
  [500, "lineLoad", "0.5 N/mm", "2.86 lbf/in"],
  [35, "mass", "35 kg", "77.2 lb"],
  [12345, "mass", "12345 kg", "27216 lb"],
  [0.012, "mass", "12 g", "0.0265 lb"],
  [3.456, "frequency", "3.46 Hz", "3.46 Hz"],
  [293.15, "temperature", "20 °C", "68 °F"],
  [0.6543, "ratio", "0.654", "0.654"],
  [7, "count", "7", "7"],
])("%d (%s) prints as %s, or %s", (si, quantity, metric, imperial) => {
  expect(formatQuantity(si, quantity, "mm-N-kg")).toBe(metric);
  expect(formatQuantity(si, quantity, "in-lbf-lb")).toBe(imperial);
});

test("decimals can be set, and trailing zeros go all the same", () => {
  expect(formatQuantity(0.0081234, "length", "mm-N-kg", 3)).toBe("8.123 mm");
  expect(formatQuantity(0.0081, "length", "mm-N-kg", 3)).toBe("8.1 mm");
});

test("no number prints as what it is, huge ones in powers of ten, never minus zero", () => {
  expect(formatNumber(Number.NaN, 1)).toBe("no number");
  expect(formatNumber(Number.POSITIVE_INFINITY, 1)).toBe("unbounded");
  expect(formatNumber(1.234e21, 1)).toBe("1.23e21");
  expect(formatNumber(-0.04, 1)).toBe("0");
  expect(formatNumber(-0, 3)).toBe("0");
});

describe("pairs", () => {
  const pair = (a: number, b: number, quantity: Quantity) => {
    const { measured, limit } = formatPair(a, b, quantity, "mm-N-kg");
    return `${measured} / ${limit}`;
  };

  test.each<[number, number, Quantity, string]>([
    [0.0081, 0.0049, "length", "8.1 mm / 4.9 mm"],
    [0.00500001, 0.005, "length", "5.00001 mm / 5 mm"],
    [999.9, 1000.2, "force", "0.9999 kN / 1.0002 kN"],
    [1043.7, 20, "force", "1.04 kN / 0.02 kN"],
    [1e-12, 0, "force", "0.000000000001 N / 0 N"],
    [5, 5, "force", "5 N / 5 N"],
    [5 * (1 + 1e-12), 5, "force", "5 N / 5 N"],
    [0.66667, 0.6666, "ratio", "0.6667 / 0.6666"],
  ])("%d and %d (%s): %s", (a, b, quantity, text) => {
    expect(pair(a, b, quantity)).toBe(text);
  });

  test("values more than 1e-9 apart always print differently, in one unit, and in the right order", () => {
    const size = fc.double({ min: 1e-5, max: 1e6, noNaN: true });
    const step = fc.double({ min: 2e-9, max: 2, noNaN: true });
    const quantity = fc.constantFrom<Quantity>("length", "force", "stress", "ratio", "angle", "mass");
    fc.assert(
      fc.property(size, step, quantity, fc.constantFrom<UnitSystem>("mm-N-kg", "in-lbf-lb"), (a, by, q, system) => {
        const { measured, limit } = formatPair(a * (1 + by), a, q, system);
        expect(Number.parseFloat(measured)).toBeGreaterThan(Number.parseFloat(limit));
        expect(measured.replace(/^[-\d.e]+/, "")).toBe(limit.replace(/^[-\d.e]+/, ""));
      }),
      { numRuns: 2000 },
    );
  });
});

test.each<[number, number, UnitSystem, string]>([
  // 2.54 mm of 0.5 mm: 508 %, which 0.1 in of 0.02 in is not.
  [0.00254, 0.0005, "in-lbf-lb", "0.1 in / 0.0197 in"],
  [0.00254, 0.0005, "mm-N-kg", "2.54 mm / 0.5 mm"],
  // 0.36 of 0.3 is 120 %, 0.4 of 0.3 would be 133 %.
  [0.00036, 0.0003, "mm-N-kg", "0.36 mm / 0.3 mm"],
  // 8.1 of 4.9 is 165 %, as 8.14 of 4.92 is.
  [0.00814, 0.00492, "mm-N-kg", "8.1 mm / 4.9 mm"],
])("a pair of %d m and %d m in %s prints with the digits that give its share: %s", (a, b, system, expected) => {
  const { measured, limit } = formatPair(a, b, "length", system);
  expect(`${measured} / ${limit}`).toBe(expected);
});

test("what is printed with all its digits reads back as the same value", () => {
  const quantities = (Object.keys(UNITS) as Quantity[]).filter((q) => q !== "count");
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1000, noNaN: true }),
      fc.constantFrom(...quantities),
      fc.constantFrom<UnitSystem>("mm-N-kg", "in-lbf-lb"),
      (value, quantity, system) => {
        const reading = readQuantity(formatQuantity(value, quantity, system, 15), quantity, system);
        if (!("si" in reading)) throw new Error(reading.found);
        expect(Math.abs(reading.si - value) / value).toBeLessThan(1e-8);
      },
    ),
  );
});
