import type { Quantity } from "./quantity.ts";

/** What a bare number in a file means. */
export type UnitSystem = "mm-N-kg" | "in-lbf-lb";

/** The unit of a bare number, per quantity, as it is written in a file. Angles are degrees in both. */
const BARE_UNITS: Readonly<Record<UnitSystem, Readonly<Record<Quantity, string>>>> = {
  "mm-N-kg": {
    length: "mm",
    area: "mm²",
    sectionModulus: "mm³",
    secondMoment: "mm⁴",
    angle: "°",
    force: "N",
    moment: "N·m",
    stress: "MPa",
    pressure: "kPa",
    lineLoad: "N/mm",
    mass: "kg",
    lineMass: "kg/m",
    massDensity: "kg/m³",
    frequency: "Hz",
    velocity: "m/s",
    temperature: "°C",
    stiffness: "N/mm",
    rotationalStiffness: "N·m/rad",
    ratio: "",
    count: "",
  },
  "in-lbf-lb": {
    length: "in",
    area: "in²",
    sectionModulus: "in³",
    secondMoment: "in⁴",
    angle: "°",
    force: "lbf",
    moment: "lbf·in",
    stress: "psi",
    pressure: "psi",
    lineLoad: "lbf/in",
    mass: "lb",
    lineMass: "lb/ft",
    massDensity: "lb/in³",
    frequency: "Hz",
    velocity: "ft/s",
    temperature: "°F",
    stiffness: "lbf/in",
    rotationalStiffness: "lbf·in/rad",
    ratio: "",
    count: "",
  },
};

/** The unit that a bare number has; "" for ratios and counts. */
export function bareUnit(quantity: Quantity, system: UnitSystem): string {
  return BARE_UNITS[system][quantity];
}
