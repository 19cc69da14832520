import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.flexes",
  key: "cracks",
  slip: "the thinnest sheet of acrylic ordered for a wall that people lean on",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: { "panel.flexes": "a sheet that cracks also gives", "panel.misfit": "the gasket does not grip it" },
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.sheet = "acrylic-3";
    return [spot];
  },
};
