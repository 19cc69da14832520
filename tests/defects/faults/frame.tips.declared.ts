import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.tips",
  key: "declared",
  slip: "a pull sideways that the feet cannot hold down",
  spots: { "seed-cabinet": "top-front" },
  sizes: "plain",
  consequences: { "frame.tips": "what a pull lifts is near to tipping", ...OVERLOAD },
  plant(file, spot) {
    addLoad(file, { case: "pull", on: spot, force: 100, direction: "+y" });
    return ["frame"];
  },
};
