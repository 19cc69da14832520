import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.tips",
  key: "slides",
  slip: "a pull sideways harder than the feet rub on the floor",
  spots: { "braced-trestle": "low-left" },
  // N, 150 mm over the floor: 983 N of weight, 400 mm inside the legs, hold out against 2.62 kN; its friction holds 295 N.
  sizes: { just: 2650, far: 5000 },
  consequences: { "frame.tips": "what a pull lifts is near to tipping", ...OVERLOAD },
  plant(file, spot, size) {
    addLoad(file, { case: "pull", on: spot, force: size, direction: "+x" });
    return ["frame"];
  },
};
