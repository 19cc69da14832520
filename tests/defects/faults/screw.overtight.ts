import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector, forSlot } from "../draughting.ts";
import type { Fault } from "../fault.ts";

/** Torque at which the lips of the frames' profiles give, by slot size, N·m or lbf·in: their rating over K d, on their pages. */
const GIVES: Readonly<Record<string, number>> = { "5": 3.49, "6": 8.25, "8": 20.7, "1/4": 84 };

export const fault: Fault = {
  rule: "screw.overtight",
  key: "over",
  slip: "a torque typed from the table of another screw",
  spots: Object.fromEntries(
    Object.entries(AT_CROSS_BARS).filter(([frame]) => !["pot-rack", "inch-bench"].includes(frame)),
  ),
  sizes: { just: 1.01, far: 2 }, // times what the lips bear
  plant(file, spot, size) {
    changeConnector(file, spot, "to", { torque: size * forSlot(file, spot, GIVES) });
    return [`${spot}.to/1/a1`];
  },
};
