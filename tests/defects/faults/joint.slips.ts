import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.slips",
  key: "slips",
  slip: "a heavier load on a bar that brackets hold by friction",
  spots: {
    "inch-bench": "low-left",
    "plant-display": "front",
    "pot-rack": "left",
    "step-platform": "tread-1",
    workstation: "back-rail",
  },
  sizes: { sound: 0, faulty: 40000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const force = file.units === "mm-N-kg" ? size : size / 4.4482216; // lbf
    addLoad(file, { case: "hoist", on: spot, force });
    return [];
  },
};
