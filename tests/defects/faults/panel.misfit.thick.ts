import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "thick",
  slip: "a board thicker than the slot is wide, without a strip",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: {
    "panel.misfit": "a board of wood moves differently",
    "build.too-heavy": "a board weighs more than the sheet",
  },
  plant(file, spot) {
    for (const panel of file.panels ?? []) {
      if (panel.id !== spot) continue;
      panel.sheet = "plywood-12";
      delete panel.gasket;
    }
    return [spot];
  },
};
