import { mm } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

/** Of each board the bar at one end of it. */
const LAST: Readonly<Record<string, string>> = {
  "seed-cabinet": "top-left",
  "step-platform": "cross-1",
  workstation: "cross-1",
};

export const fault: Fault = {
  rule: "panel.unsupported",
  key: "falls",
  slip: "a board listed on the first of its bars alone",
  spots: { "seed-cabinet": "lid", "step-platform": "platform", workstation: "top" },
  sizes: "plain",
  consequences: { ...OVERLOAD, "load.none/lost": "its load has nothing to go to" },
  plant(file, spot, _, frame) {
    for (const panel of file.panels ?? [])
      if (panel.id === spot) {
        panel.bars = [LAST[frame] ?? ""];
        panel.overhang = [0, mm(file, 600), 0, 0];
      }
    return [spot];
  },
};
