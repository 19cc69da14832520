import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "large",
  slip: "a sheet ordered larger than from slot floor to slot floor",
  spots: { "saw-guard": "back-upper" },
  sizes: { sound: 733, faulty: 760 }, // mm; 735 from floor to floor,
  consequences: {
    "panel.misfit": "what is too large also jams",
    "panel.rattles": "what is too large also jams",
    "panel.flexes": "what is too large also jams",
  },
  plant(file, spot, size) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.size = [size, 638];
    return [spot];
  },
};
