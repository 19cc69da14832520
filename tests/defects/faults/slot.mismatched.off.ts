import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector, mm } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "off",
  slip: "a bracket set beside the line of its slots",
  spots: AT_CROSS_BARS,
  sizes: { just: 0.62, far: 3 }, // mm of 0.6 mm
  consequences: {
    "bar.clash": "it runs into what lies beside it",
    "joint.turns": "one screw fewer holds the bar",
    ...OVERLOAD,
  },
  plant(file, spot, size) {
    changeConnector(file, spot, "to", { shift: mm(file, size) });
    return [`${spot}.to/1/a1`, `${spot}.to/1/b1`];
  },
};
