import { moveEnd } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "off",
  slip: "the bar between two sheets drawn out of their plane",
  spots: { "saw-guard": "mid-back" },
  sizes: { sound: 0, faulty: 10 }, // mm
  consequences: {
    "slot.mismatched": "its end fasteners lie beside the slots",
    "bar.adrift": "no screw is left in a slot",
    "load.none/lost": "no screw is left in a slot",
    "panel.misfit": "both sheets run in it",
    "panel.uncut": "the sheets lie elsewhere",
  },
  plant(file, spot, size) {
    for (const end of ["from", "to"] as const) moveEnd(file, spot, end, 1, size);
    return ["back-lower", "back-upper"];
  },
};
