import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector, forSlot } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

/** A screw too thick for every nut of the slot, by slot size. */
const THICKER: Readonly<Record<string, string>> = {
  "5": "M6x10",
  "6": "M8x12",
  "8": "M10x16",
  "10": "M12x20",
  "1/4": "5/16-18x0.4375",
};

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "nut",
  slip: "a thicker screw that no nut of the slot takes",
  spots: Object.fromEntries(Object.entries(AT_CROSS_BARS).filter(([frame]) => frame !== "inch-bench")),
  sizes: "plain",
  consequences: { "screw.crowded": "its head is larger", "joint.turns": "one screw fewer holds the bar", ...OVERLOAD },
  plant(file, spot) {
    changeConnector(file, spot, "to", { screw: forSlot(file, spot, THICKER) });
    return [`${spot}.to/1/a1`, `${spot}.to/1/b1`];
  },
};
