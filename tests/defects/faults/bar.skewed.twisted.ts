import { AT_CROSS_BARS } from "../cross-bars.ts";
import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.skewed",
  key: "twisted",
  slip: "a bar turned a little about its length",
  spots: AT_CROSS_BARS,
  sizes: { just: 1.02, far: 4 }, // degrees of 1°
  consequences: {
    "slot.mismatched": "its screws run off the slots",
    "bar.adrift": "no screw is left in a slot",
    "panel.uncut/lies": "a corner of its brackets comes up into the board on it",
    "load.none/lost": "no screw is left in a slot",
  },
  plant(file, spot, size) {
    bar(file, spot).roll = size;
    return [spot];
  },
};
