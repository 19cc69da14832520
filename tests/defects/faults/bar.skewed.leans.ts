import { AT_CROSS_BARS } from "../cross-bars.ts";
import { moveEnd, point, runsAlong } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.skewed",
  key: "leans",
  slip: "one end of a bar typed a little to the side",
  spots: AT_CROSS_BARS,
  sizes: { just: 1.02, far: 4 }, // degrees of 1°
  consequences: {
    "slot.mismatched": "its screws run off the slots",
    "bar.adrift": "no screw is left in a slot",
    "load.none/lost": "no screw is left in a slot",
    "joint.slips": "its brackets stand askew",
  },
  plant(file, spot, size) {
    const along = runsAlong(file, spot);
    const length = point(file, spot, "to")[along] - point(file, spot, "from")[along];
    moveEnd(file, spot, "to", along === 0 ? 1 : 0, length * Math.tan((size * Math.PI) / 180));
    return [spot];
  },
};
