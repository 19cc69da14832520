import { kitOf, refasten } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.buried",
  key: "buried",
  slip: "an end fastener turned over, without its lock, so that its screw lies behind the sheet",
  spots: { "saw-guard": "low-back" },
  sizes: "plain",
  consequences: {
    "panel.uncut": "the fastener stands in the corner of the sheet",
    "build.deadlock": "the sheet lies over the screws at its upper edge too",
    "joint.loosens": "it has no lock",
  },
  plant(file, spot) {
    for (const end of ["from", "to"] as const) {
      const [first] = kitOf(file, spot, end);
      if (first) refasten(file, spot, end, [{ ...first, on: "above", lock: "none" }]);
    }
    return ["back-lower"];
  },
};
