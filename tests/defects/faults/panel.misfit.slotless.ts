import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "slotless",
  slip: "the bar between two sheets of a profile with one closed face",
  spots: { "saw-guard": "mid-left left-upper" },
  sizes: "plain",
  plant(file, spot) {
    const [between = "", sheet = ""] = spot.split(" ");
    // Face A, the closed one, looks up as drawn: towards the upper sheet.
    bar(file, between).profile += "-one-closed";
    return [sheet];
  },
};
