import { bar, mm } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bore.clash",
  key: "clash",
  slip: "two holes that cross inside a bar",
  spots: {
    "braced-trestle": "front",
    "inch-bench": "front",
    "pot-rack": "top-front",
    "step-platform": "back",
    "timber-table": "front-upper",
    workstation: "shelf-back",
  },
  sizes: { just: 0.9, far: -5 }, // mm of metal left, of 1 mm
  plant(file, spot, size) {
    const [diameter, first] = [mm(file, 5), mm(file, 30)];
    bar(file, spot).holes = [
      { at: first, on: "+y", diameter },
      { at: first + diameter + mm(file, size), on: "+z", diameter },
    ];
    return [spot];
  },
};
