import { bar, point, runsAlong } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.weak-hole",
  key: "severed",
  slip: "the diameter of a hole typed with a digit too many",
  spots: { "plant-display": "back", "timber-table": "stretcher" },
  sizes: { just: 40, far: 50 }, // mm, in bars of 40 mm
  consequences: { "hole.near-edge": "a hole that wide reaches whatever is near" },
  plant(file, spot, size) {
    const along = runsAlong(file, spot);
    const middle = (point(file, spot, "to")[along] - point(file, spot, "from")[along]) / 2;
    bar(file, spot).holes = [{ at: middle + 60, on: "above", diameter: size, through: true }];
    return [spot];
  },
};
