import { kitOf, refasten } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.crowded",
  key: "key",
  slip: "a bracket added under a rail whose end fastener is tightened from there",
  spots: { "saw-guard": "mid-left" },
  sizes: "plain",
  consequences: {
    "nut.clash": "the fastener has no room beside the nut",
    "panel.uncut": "the bracket stands in a corner of the sheet",
  },
  plant(file, spot) {
    refasten(file, spot, "from", [...kitOf(file, spot, "from"), { connector: "inside-bracket-45", on: "below" }]);
    return [`${spot}.from/1/a1`];
  },
};
