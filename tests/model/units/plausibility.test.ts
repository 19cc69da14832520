import { describe, expect, test } from "vitest";
import { plausible, type Role } from "../../../src/model/units/plausibility.ts";
import { readQuantity } from "../../../src/model/units/read-quantity.ts";

describe("an ordinary frame raises no doubt", () => {
  test.each<[number, Role]>([
    [0, "coordinate"],
    [-1.5, "coordinate"],
    [0.06, "bar length"],
    [6, "bar length"],
    [0.02, "section size"],
    [0.16, "section size"],
    [0.004, "sheet thickness"],
    [0.018, "sheet thickness"],
    [0.75, "panel size"],
    [0.016, "screw length"],
    [250, "load force"],
    [5000, "load force"],
    [1500, "pressure"],
    [500, "line load"],
    [35, "mass"],
    [20, "torque"],
    [293.15, "temperature"],
    [50, "frequency"],
    [0, "load force"],
    [-250, "load force"],
  ])("%d as %s", (si, role) => {
    expect(plausible(si, role, "mm-N-kg")).toBeUndefined();
    expect(plausible(si, role, "in-lbf-lb")).toBeUndefined();
  });
});

describe("a mix-up is named with the value that it would make", () => {
  test.each<[string, number, Role, "length" | "force" | "moment" | "pressure" | "mass", string]>([
    ["metres for mm", 0.86, "bar length", "length", "perhaps m and mm were mixed up: then it is 860 mm"],
    ["mm for metres", 860_000, "bar length", "length", "perhaps mm and m were mixed up: then it is 860 mm"],
    ["inches for mm", 1.575, "section size", "length", "perhaps in and mm were mixed up: then it is 40 mm"],
    ["mm turned twice", 1016, "section size", "length", "perhaps mm and in were mixed up: then it is 40 mm"],
    ["kN for N", 0.25, "load force", "force", "perhaps kN and N were mixed up: then it is 250 N"],
    ["N·mm for N·m", 12_000, "torque", "moment", "perhaps N·mm and N·m were mixed up: then it is 12 N·m"],
    ["Pa for kPa", 1500, "pressure", "pressure", "perhaps Pa and kPa were mixed up: then it is 1.5 kPa"],
    ["g for kg", 35_000, "mass", "mass", "perhaps g and kg were mixed up: then it is 35 kg"],
  ])("%s", (_about, raw, role, quantity, mend) => {
    const reading = readQuantity(raw, quantity, "mm-N-kg");
    if (!("si" in reading)) throw new Error(reading.found);
    expect(plausible(reading.si, role, "mm-N-kg")?.mend).toBe(mend);
  });

  test("the range is told, and no mix-up where none explains the value", () => {
    expect(plausible(1e9, "bar length", "mm-N-kg")).toEqual({
      found: "bar length 1000000000000 mm",
      expected: "a length from 5 mm to 12000 mm",
    });
    expect(plausible(20, "temperature", "mm-N-kg")?.expected).toBe("a temperature from -50 °C to 150 °C");
  });

  test("both ends of a range are inside it", () => {
    expect(plausible(0.005, "bar length", "mm-N-kg")).toBeUndefined();
    expect(plausible(12, "bar length", "mm-N-kg")).toBeUndefined();
    expect(plausible(0.00499, "bar length", "mm-N-kg")).toBeDefined();
    expect(plausible(12.001, "bar length", "mm-N-kg")).toBeDefined();
  });
});
