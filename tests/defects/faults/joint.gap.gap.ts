import { AT_CROSS_BARS, cutOf } from "../cross-bars.ts";
import { drawCut, mm, runsAlong } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.gap",
  key: "gap",
  slip: "an end drawn short of the face it should touch",
  spots: AT_CROSS_BARS,
  sizes: { just: 0.52, far: 3 }, // mm of 0.5 mm
  consequences: { "slot.mismatched": "the bracket goes along with the end, its screws too" },
  plant(file, spot, size, frame) {
    drawCut(file, spot, "to", runsAlong(file, spot), cutOf(frame)[1] - mm(file, size));
    return [`${spot}.to`];
  },
};
