import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.uncut",
  key: "corner",
  slip: "the notches of one panel forgotten",
  spots: { "saw-guard": "left-lower" },
  sizes: "plain",
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) delete panel.notches;
    return [spot];
  },
};
