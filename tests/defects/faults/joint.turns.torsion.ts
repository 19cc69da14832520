import { addLoad, kitOf, refasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.turns",
  key: "torsion",
  slip: "one bracket of one screw at one end of a bar that a motor turns",
  spots: { "braced-trestle": "low-back", "plant-display": "back" },
  sizes: { sound: 0, faulty: 100 }, // N·m about the bar, which runs along x
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const [first] = kitOf(file, spot, "to");
    if (first) refasten(file, spot, "to", [{ ...first, connector: first.connector.replace("gusset-", "inside-") }]);
    addLoad(file, { case: "motor", on: spot, moment: size, direction: "+x" });
    return [`${spot}.to`];
  },
};
