import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { UNITS } from "../../../src/model/units/factors.ts";
import type { Quantity } from "../../../src/model/units/quantity.ts";
import { type Reading, readQuantity } from "../../../src/model/units/read-quantity.ts";
import { bareUnit, type UnitSystem } from "../../../src/model/units/unit-system.ts";

function inSi(reading: Reading<Quantity>): number {
  if ("si" in reading) return reading.si;
  throw new Error(`not read: ${reading.found}; expected ${reading.expected}`);
}

function refusal(raw: number | string, quantity: Quantity, system: UnitSystem = "mm-N-kg") {
  const reading = readQuantity(raw, quantity, system);
  if ("si" in reading) throw new Error(`read as ${reading.si}`);
  return reading;
}

describe("conversion factors, as printed in NIST SP 811 (2008), appendix B.8, seven digits", () => {
  test.each<[string, Quantity, number]>([
    ["1 in", "length", 0.0254],
    ["1 ft", "length", 0.3048],
    ["1 in²", "area", 6.4516e-4],
    ["1 ft²", "area", 0.09290304],
    ["1 in³", "sectionModulus", 1.638706e-5],
    ["1 in⁴", "secondMoment", 4.162314e-7],
    ["1 deg", "angle", 0.01745329],
    ["1 lbf", "force", 4.448222],
    ["1 kgf", "force", 9.80665],
    ["1 kip", "force", 4448.222],
    ["1 lbf·in", "moment", 0.1129848],
    ["1 lbf·ft", "moment", 1.355818],
    ["1 psi", "stress", 6894.757],
    ["1 ksi", "stress", 6.894757e6],
    ["1 psf", "pressure", 47.88026],
    ["1 bar", "pressure", 1e5],
    ["1 lbf/in", "lineLoad", 175.1268],
    ["1 lbf/ft", "lineLoad", 14.5939],
    ["1 lb", "mass", 0.4535924],
    ["1 oz", "mass", 0.02834952],
    ["1 lb/ft", "lineMass", 1.488164],
    ["1 lb/in³", "massDensity", 27679.9],
    ["1 lb/ft³", "massDensity", 16.01846],
    ["1 rpm", "frequency", 1 / 60],
    ["1 ft/s", "velocity", 0.3048],
    ["1 km/h", "velocity", 0.2777778],
    ["98.6 °F", "temperature", 310.15],
    ["0 °C", "temperature", 273.15],
    ["-40 °F", "temperature", 233.15],
    ["-40 °C", "temperature", 233.15],
  ])("%s", (text, quantity, value) => {
    const got = inSi(readQuantity(text, quantity, "mm-N-kg"));
    // Half a unit of the seventh digit.
    expect(Math.abs(got - value) / value).toBeLessThan(5e-7);
  });

  test("exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g_n = 9.80665 m/s², so 1 lbf = 4.4482216152605 N", () => {
    expect(inSi(readQuantity("1 in", "length", "mm-N-kg"))).toBe(0.0254);
    expect(inSi(readQuantity("1 lb", "mass", "mm-N-kg"))).toBe(0.45359237);
    expect(inSi(readQuantity("1 kgf", "force", "mm-N-kg"))).toBe(9.80665);
    expect(inSi(readQuantity("1 lbf", "force", "mm-N-kg"))).toBeCloseTo(4.4482216152605, 15);
  });
});

describe("bare numbers", () => {
  test.each<[number, Quantity, UnitSystem, number]>([
    [860, "length", "mm-N-kg", 0.86],
    [30, "length", "in-lbf-lb", 0.762],
    [250, "force", "mm-N-kg", 250],
    [1, "force", "in-lbf-lb", 4.4482216152605],
    [12, "moment", "mm-N-kg", 12],
    [1, "moment", "in-lbf-lb", 0.1129848290276167],
    [1.5, "pressure", "mm-N-kg", 1500],
    [195, "stress", "mm-N-kg", 195e6],
    [1, "pressure", "in-lbf-lb", 6894.757293168],
    [0.5, "lineLoad", "mm-N-kg", 500],
    [35, "mass", "mm-N-kg", 35],
    [180, "angle", "mm-N-kg", Math.PI],
    [180, "angle", "in-lbf-lb", Math.PI],
    [20, "temperature", "mm-N-kg", 293.15],
    [68, "temperature", "in-lbf-lb", 293.15],
    [0.3, "ratio", "mm-N-kg", 0.3],
    [4, "count", "in-lbf-lb", 4],
  ])("%d is %s in %s", (raw, quantity, system, value) => {
    expect(inSi(readQuantity(raw, quantity, system))).toBeCloseTo(value, 9);
  });

  test("every bare unit is one that text may carry, with the same meaning", () => {
    for (const system of ["mm-N-kg", "in-lbf-lb"] as const) {
      for (const quantity of Object.keys(UNITS) as Quantity[]) {
        const text = `2 ${bareUnit(quantity, system)}`.trim();
        expect(readQuantity(text, quantity, system)).toEqual(readQuantity(2, quantity, system));
      }
    }
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308 * 10])("%d is refused", (raw) => {
    expect(refusal(raw, "length").expected).toBe("a finite number");
  });

  test("what is finite in the file and not in SI is refused", () => {
    expect(refusal(1e308, "stress").expected).toBe("a finite number");
  });

  test("minus zero is zero; below absolute zero and half a piece are refused", () => {
    expect(Object.is(inSi(readQuantity(-0, "length", "mm-N-kg")), 0)).toBe(true);
    expect(refusal(-273.16, "temperature").expected).toContain("absolute zero");
    expect(refusal(2.5, "count").expected).toBe("a whole number from 0");
    expect(refusal(-1, "count").expected).toBe("a whole number from 0");
  });
});

describe("text that carries its unit", () => {
  test.each<[string, Quantity, number]>([
    ["30 in", "length", 0.762],
    ["30in", "length", 0.762],
    [" 762 mm ", "length", 0.762],
    ["1 1/2 in", "length", 0.0381],
    ["1-1/2 in", "length", 0.0381],
    ["3/8 in", "length", 0.009525],
    ["-3/8 in", "length", -0.009525],
    [".5 in", "length", 0.0127],
    ["1e-3 m", "length", 0.001],
    ["12 N·m", "moment", 12],
    ["12 N.m", "moment", 12],
    ["12 N m", "moment", 12],
    ["12 N*m", "moment", 12],
    ["12 Nm", "moment", 12],
    ["1.5 kPa", "pressure", 1500],
    ["70 GPa", "stress", 70e9],
    ["195 N/mm2", "stress", 195e6],
    ["195 N/mm^2", "stress", 195e6],
    ["2 kN", "force", 2000],
    ["30 °", "angle", Math.PI / 6],
    ["30°", "angle", Math.PI / 6],
    ["1:100", "ratio", 0.01],
    ["1 : 50", "ratio", 0.02],
    ["30 %", "ratio", 0.3],
    ["0.3", "ratio", 0.3],
  ])("%j as %s", (text, quantity, value) => {
    expect(inSi(readQuantity(text, quantity, "in-lbf-lb"))).toBeCloseTo(value, 12);
  });

  test("a slope read as an angle is its arctangent", () => {
    expect(Math.tan(inSi(readQuantity("1:100", "angle", "mm-N-kg")))).toBeCloseTo(0.01, 15);
  });

  test("one length in three spellings is one double", () => {
    const spellings = ["38.1 mm", "1.5 in", "3.81 cm", "1 1/2 in", "0.0381 m", "1-1/2in"];
    expect(new Set(spellings.map((text) => inSi(readQuantity(text, "length", "mm-N-kg")))).size).toBe(1);
  });

  test.each<[string, Quantity, string | undefined, string]>([
    ["12 N", "length", undefined, '"12 N", which is a force'],
    ["12 mm", "force", undefined, '"12 mm", which is a length'],
    ["250 lb", "force", 'write "250 lbf"', '"250 lb", which is a mass'],
    ["25 kg", "force", 'write its weight: "245 N"', '"25 kg", which is a mass'],
    ["2 lb/in", "lineLoad", 'write "2 lbf/in"', '"2 lb/in", which is a mass per length'],
    ["12 in-lb", "moment", 'write "12 lbf·in"', 'the unit in-lb in "12 in-lb"'],
    ["9 ft-lb", "moment", 'write "9 lbf·ft"', 'the unit ft-lb in "9 ft-lb"'],
    ["30 inc", "length", 'write "30 in"', 'the unit inc in "30 inc"'],
    ["30 MM", "length", 'write "30 mm"', 'the unit MM in "30 MM"'],
    ["5 kn", "force", 'write "5 kN"', 'the unit kn in "5 kn"'],
    ["5'", "length", 'write "5 ft"', "the unit ' in \"5'\""],
    ['5"', "length", 'write "5 in"', 'the unit " in "5""'],
    ["1,5 m", "length", 'write "1.5 m"', 'a decimal comma in "1,5 m"'],
    ["30", "length", 'write 30, or "30 mm"', '"30" without a unit'],
    ["thirty", "length", undefined, '"thirty"'],
    ["", "length", undefined, '""'],
    ["1/0 in", "length", undefined, '"1/0 in"'],
    ["NaN mm", "length", undefined, '"NaN mm"'],
    ["5 constructor", "length", undefined, 'the unit constructor in "5 constructor"'],
    ["0x10 mm", "length", undefined, 'the unit x10 mm in "0x10 mm"'],
    ["1:100", "length", undefined, 'the unit :100 in "1:100"'],
    [`${"9".repeat(65)} mm`, "length", undefined, `"${"9".repeat(39)}…"`],
  ])("%j is no %s", (text, quantity, mend, found) => {
    const refused = refusal(text, quantity);
    expect(refused.found).toBe(found);
    expect(refused.mend).toBe(mend);
    expect(refused.expected).not.toBe("");
  });

  test("every mend that says what to write can be read", () => {
    for (const text of ["250 lb", "25 kg", "30 N", "5 kn", "5 lbs"]) {
      const mend = /"(.*)"/.exec(refusal(text, text === "30 N" ? "length" : "force").mend ?? "")?.[1];
      if (mend !== undefined) expect(inSi(readQuantity(mend, "force", "mm-N-kg"))).toBeGreaterThan(0);
    }
  });

  test("whatever the text, it is read as a finite number or refused with words", () => {
    const quantity = fc.constantFrom(...(Object.keys(UNITS) as Quantity[]));
    const piece = fc.constantFrom(..."0123456789.,/-+:eE '\"°·%²", "in", "mm", "N", "lbf", "kg", "1/2", "\u202e");
    const text = fc.oneof(
      fc.string(),
      fc.array(piece, { maxLength: 10 }).map((pieces) => pieces.join("")),
    );
    fc.assert(
      fc.property(text, quantity, fc.constantFrom<UnitSystem>("mm-N-kg", "in-lbf-lb"), (raw, q, system) => {
        const reading = readQuantity(raw, q, system);
        if ("si" in reading) expect(Number.isFinite(reading.si)).toBe(true);
        else expect(reading.found.length * reading.expected.length).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });
});
