import { AT_CROSS_BARS } from "../cross-bars.ts";
import { bar } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "closed",
  slip: "a bar with one closed face, that face turned to the brackets",
  // Bars along +y: turned by 90° face A, the closed one, looks to +x, where the first bracket of each end sits.
  spots: Object.fromEntries(
    Object.entries(AT_CROSS_BARS).filter(
      ([frame]) => !["camera-rig", "hoist-gantry", "incubator-stand"].includes(frame),
    ),
  ),
  sizes: "plain",
  consequences: { "joint.turns": "one screw fewer holds the bar", ...OVERLOAD },
  plant(file, spot) {
    const one = bar(file, spot);
    one.profile = `${one.profile}-one-closed`;
    one.roll = 90;
    return [`${spot}.from/1/a1`, `${spot}.to/1/a1`];
  },
};
