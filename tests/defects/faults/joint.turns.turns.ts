import { kitOf, refasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.turns",
  key: "turns",
  slip: "one bracket of one screw at each end of a bar that carries nothing",
  spots: {
    "braced-trestle": "low-back",
    workstation: "back-rail",
    "incubator-stand": "low-front",
    "plant-display": "left",
  },
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot) {
    for (const end of ["from", "to"] as const) {
      const [first] = kitOf(file, spot, end);
      if (first) refasten(file, spot, end, [{ ...first, connector: first.connector.replace("gusset-", "inside-") }]);
    }
    return [spot];
  },
};
