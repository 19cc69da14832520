import { AT_CROSS_BARS, cutOf } from "../cross-bars.ts";
import { drawCut, mm, runsAlong } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.clash",
  key: "clash",
  slip: "an end drawn past the face of the bar it meets",
  spots: AT_CROSS_BARS,
  sizes: { just: 0.11, far: 5 }, // mm of 0.1 mm
  consequences: {
    "hole.near-edge": "the bracket goes along with the end",
    "screw.crowded": "the bracket goes along with the end",
    "slot.mismatched": "the bracket goes along with the end, its screws too",
    "bar.adrift": "its screws then find no slot",
    "load.none/lost": "its screws then find no slot",
  },
  plant(file, spot, size, frame) {
    drawCut(file, spot, "to", runsAlong(file, spot), cutOf(frame)[1] + mm(file, size));
    return [spot];
  },
};
