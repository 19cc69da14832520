import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.clash",
  key: "sheet",
  slip: "a top drawn to the back of its rails, through the uprights that stand on them",
  spots: { workstation: "upright-1 upright-2 upright-3" },
  sizes: "plain",
  consequences: { "panel.uncut/lies": "the brackets of the uprights stand in it as well" },
  plant(file, spot) {
    const top = file.panels?.find(({ id }) => id === "top");
    if (top) delete top.overhang;
    return spot.split(" ");
  },
};
