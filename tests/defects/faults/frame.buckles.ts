import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.buckles",
  key: "buckles",
  slip: "a load on slender posts that was meant for a wall",
  spots: { "plant-display": "hook-1 hook-2", "pot-rack": "top-1 top-2" },
  sizes: { sound: 0, faulty: 90000 }, // N on each
  consequences: { "frame.loose": "nothing left", ...OVERLOAD },
  plant(file, spot, size) {
    addLoad(file, { case: "tank", on: spot.split(" ") as [string, ...string[]], force: size });
    return ["frame"];
  },
};
