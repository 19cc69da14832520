import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "jams",
  slip: "a sheet ordered with no room to grow",
  spots: { "saw-guard": "back-upper" },
  sizes: { just: 734, far: 734.9 }, // mm; 735 from floor to floor,
  consequences: {
    "panel.misfit": "what jams may be too large at once",
    "panel.rattles": "what jams may be too large at once",
    "panel.flexes": "what jams may be too large at once",
  },
  plant(file, spot, size) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.size = [size, 638];
    return [spot];
  },
};
