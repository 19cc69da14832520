import { forSlot, mm, placeBar } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "hole.near-edge",
  key: "nut",
  slip: "a cross bar moved out to the end of the bars it meets",
  spots: {
    "braced-trestle": "bearer-1",
    "inch-bench": "cross-1",
    "incubator-stand": "cross-1",
    "plant-display": "hook-1",
    "pot-rack": "top-1",
    "step-platform": "cross-1",
    "timber-table": "bearer-1",
    workstation: "cross-1",
  },
  sizes: { just: 0.1, far: 3 }, // mm short of 1.5 slot openings, with all bars starting at x = 0
  consequences: OVERLOAD,
  plant(file, spot, size) {
    // Half the bar, the hole's distance from the corner, and 1.5 openings of the slot.
    const at: Readonly<Record<string, number>> = {
      "6": 15 + 17 + 1.5 * 6.2,
      "8": 20 + 22 + 1.5 * 8.2,
      "10": 22.5 + 25 + 1.5 * 10.2,
      "1/4": 0.5 + 0.62 + 1.5 * 0.26,
      "5/16": 0.75 + 0.85 + 1.5 * 0.32,
    };
    placeBar(file, spot, 0, forSlot(file, spot, at) - mm(file, size));
    return [`${spot}.from`, `${spot}.to`];
  },
};
