import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "tight",
  slip: "a sheet too thick for its strip",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: {
    "panel.misfit": "what is too thick for the strip may be so for the slot",
    "panel.rattles": "what is too thick for the strip may be so for the slot",
    "panel.flexes": "what is too thick for the strip may be so for the slot",
  },
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.sheet = "polycarbonate-10";
    return [spot];
  },
};
