import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.uncut",
  key: "corner",
  slip: "a wall let into the slots up to a rail across that ends over its post, without a notch",
  spots: { "saw-guard": "right-upper" },
  sizes: "plain",
  plant(file, spot) {
    for (const panel of file.panels ?? []) if (panel.id === spot) delete panel.notches;
    return [spot];
  },
};
