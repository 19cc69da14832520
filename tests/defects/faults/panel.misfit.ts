import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "thin",
  slip: "a sheet too thin for its gasket",
  spots: { "saw-guard": "back-upper" },
  sizes: { just: 4, far: 2 }, // mm of the 5 mm that the strip grips
  consequences: { "panel.misfit": "a thin sheet also rattles", "panel.flexes": "a thin sheet flaps" },
  plant(file, spot, size) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.sheet = `polycarbonate-${size}`;
    return [spot];
  },
};
