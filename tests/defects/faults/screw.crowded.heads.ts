import { changeConnector } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.crowded",
  key: "heads",
  slip: "a thicker screw in a small bracket",
  spots: { "camera-rig": "back" },
  sizes: "plain",
  consequences: {
    "slot.mismatched/nut": "no nut of the slot takes it",
    "screw.crowded/key": "its head stands in the way",
    ...OVERLOAD,
  },
  plant(file, spot) {
    changeConnector(file, spot, "to", { screw: "M6x10" });
    return [`${spot}.to/1/a1`];
  },
};
