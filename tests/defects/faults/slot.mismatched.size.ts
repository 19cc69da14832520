import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector, forSlot } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

/** A bracket of another slot size, by slot size. */
const OTHER: Readonly<Record<string, string>> = {
  "5": "gusset-bracket-30",
  "6": "gusset-bracket-20",
  "8": "gusset-bracket-45",
  "10": "gusset-bracket-40",
  "1/4": "gusset-bracket-1.5",
  "5/16": "gusset-bracket-1",
};

/** A double bar asks for the slot by name, which the other bracket has as well: that file is not read. */
const { "hoist-gantry": _, ...SINGLE } = AT_CROSS_BARS;

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "size",
  slip: "a bracket of another series",
  spots: SINGLE,
  sizes: "plain",
  consequences: {
    "screw.misfit": "its screw was chosen for another slot",
    "slot.mismatched": "its holes lie elsewhere",
    "bar.clash": "its legs are longer",
    "panel.uncut/lies": "its legs are wider",
    "screw.crowded": "its holes lie elsewhere",
    "hole.near-edge": "its holes lie elsewhere",
    "joint.turns": "one screw fewer holds the bar",
    ...OVERLOAD,
  },
  plant(file, spot) {
    changeConnector(file, spot, "to", { connector: forSlot(file, spot, OTHER) });
    return [`${spot}.to/1`];
  },
};
