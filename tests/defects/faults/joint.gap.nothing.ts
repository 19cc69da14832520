import { AT_CROSS_BARS, cutOf } from "../cross-bars.ts";
import { drawCut, mm, runsAlong } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.gap",
  key: "nothing",
  slip: "a bar typed 45 mm too short",
  spots: AT_CROSS_BARS,
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot, _, frame) {
    drawCut(file, spot, "to", runsAlong(file, spot), cutOf(frame)[1] - mm(file, 45));
    return [`${spot}.to`];
  },
};
