import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "nut.pulls-out",
  key: "pulled",
  slip: "a hoist hung over the top rail so that it pulls upward",
  spots: { "plant-display": "top-front", "pot-rack": "top-front" },
  sizes: { sound: 0, faulty: 90000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    addLoad(file, { case: "upward", on: spot, force: size, direction: "+z" });
    return [];
  },
};
