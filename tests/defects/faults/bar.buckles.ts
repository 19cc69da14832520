import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.buckles",
  key: "buckles",
  slip: "a load on a post that was meant for four",
  spots: { "pot-rack": "post-1", "plant-display": "post-2", "seed-cabinet": "post-1" },
  sizes: { sound: 0, faulty: 90000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    addLoad(file, { case: "tank", on: spot, force: size, at: 1100 });
    return [spot];
  },
};
