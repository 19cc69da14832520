import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "slips",
  slip: "a sheet ordered by the opening, not by the slots",
  spots: { "saw-guard": "back-upper" },
  sizes: { sound: 733, faulty: 690 }, // mm; the opening is 710,
  consequences: {
    "panel.misfit": "what slips out one way slips out the other",
    "panel.rattles": "what slips out one way slips out the other",
    "panel.flexes": "what slips out one way slips out the other",
  },
  plant(file, spot, size) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.size = [size, 638];
    return [spot];
  },
};
