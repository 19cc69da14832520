import type { Quantity } from "./quantity.ts";

/** What a message calls a quantity. */
export const QUANTITY_WORDS: Readonly<Record<Quantity, string>> = {
  length: "a length",
  area: "an area",
  sectionModulus: "a section modulus",
  secondMoment: "a second moment of area",
  angle: "an angle",
  force: "a force",
  moment: "a moment",
  stress: "a stress",
  pressure: "a pressure",
  lineLoad: "a line load",
  mass: "a mass",
  lineMass: "a mass per length",
  massDensity: "a density",
  frequency: "a frequency",
  velocity: "a velocity",
  temperature: "a temperature",
  stiffness: "a stiffness",
  rotationalStiffness: "a rotational stiffness",
  ratio: "a ratio",
  count: "a whole number from 0",
};
