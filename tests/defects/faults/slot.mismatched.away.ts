import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "away",
  slip: "a bracket put on top, where the bar it leans on ends",
  // Cross bars flush with the bars they meet.
  spots: Object.fromEntries(
    Object.entries(AT_CROSS_BARS).filter(([frame]) =>
      ["inch-bench", "incubator-stand", "plant-display", "pot-rack", "step-platform", "workstation"].includes(frame),
    ),
  ),
  sizes: "plain",
  consequences: { "panel.uncut/lies": "a board lies where the bracket is now", ...OVERLOAD },
  plant(file, spot) {
    changeConnector(file, spot, "to", { on: "above" });
    return [`${spot}.to/1/b1`];
  },
};
