import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "turned",
  slip: "the bar between two sheets turned about its length",
  spots: { "saw-guard": "mid-left" },
  sizes: { sound: 0, faulty: 20 }, // degrees
  consequences: {
    "bar.skewed": "it is turned against the posts",
    "slot.mismatched": "its end fasteners lie beside the slots",
    "bar.adrift": "no screw is left in a slot",
    "panel.misfit": "both sheets run in it",
    "panel.uncut": "the sheets lie elsewhere",
  },
  plant(file, spot, size) {
    bar(file, spot).roll = size;
    return ["left-lower", "left-upper"];
  },
};
