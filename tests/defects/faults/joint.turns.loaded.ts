import { kitOf, refasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.turns",
  key: "loaded",
  slip: "one bracket of one screw at each end of a bar that carries a load",
  spots: {
    "braced-trestle": "bearer-1",
    "plant-display": "hook-1",
    "pot-rack": "top-1",
    "step-platform": "cross-2",
    "timber-table": "bearer-2",
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
