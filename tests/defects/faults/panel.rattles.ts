import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.rattles",
  key: "loose",
  slip: "the gasket of one panel forgotten",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) delete panel.gasket;
    return [spot];
  },
};
