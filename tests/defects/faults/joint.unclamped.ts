import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.unclamped",
  key: "open",
  slip: "a hoist hung over the top rail so that it pulls upward",
  spots: { "plant-display": "top-front", "pot-rack": "top-front" },
  sizes: { sound: 0, faulty: 60000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    addLoad(file, { case: "upward", on: spot, force: size, direction: "+z" });
    return [];
  },
};
