import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.misfit",
  key: "strip",
  slip: "a strip of the smaller series ordered for one wall",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: {
    "panel.misfit": "what does not suit the slot may not suit the sheet",
    "panel.rattles": "what does not suit the slot may not suit the sheet",
    "panel.flexes": "what does not suit the slot may not suit the sheet",
  },
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) panel.gasket = "strip-8";
    return [spot];
  },
};
