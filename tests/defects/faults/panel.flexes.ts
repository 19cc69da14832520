import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.flexes",
  key: "gives",
  slip: "a sheet of 2 mm ordered for one wall, thought to stand in gaskets as it is",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: {
    "panel.flexes": "a sheet that gives so far also cracks",
    "panel.misfit": "the gasket does not grip it",
  },
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.sheet = "polycarbonate-2";
    return [spot];
  },
};
