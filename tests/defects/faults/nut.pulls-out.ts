import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "nut.pulls-out",
  key: "pulled",
  slip: "a winch that pulls the top rail off the bars behind it",
  spots: { "plant-display": "top-front", "pot-rack": "top-front" },
  sizes: { sound: 0, faulty: 30000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    addLoad(file, { case: "winch", on: spot, force: size, direction: "-y" });
    return [];
  },
};
