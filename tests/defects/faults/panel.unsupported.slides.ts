import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.unsupported",
  key: "slides",
  slip: "two sides of a sheet left free, those that lie across from the others",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  consequences: {
    "guard.within-reach": "the guard stands open there",
    "panel.uncut": "its free sides reach past the bars",
  },
  plant(file, spot) {
    for (const panel of file.panels ?? [])
      if (panel.id === spot && panel.edges) {
        const [first, second] = panel.edges;
        if (first && second) panel.edges = [first, second, "free", "free"];
      }
    return [spot];
  },
};
