import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.gap",
  key: "untied",
  slip: "a tie that names the wrong one of two bars",
  spots: { "timber-table": "tie-front" },
  sizes: "plain",
  consequences: { ...OVERLOAD, "joint.slips": "the bar it should have held hangs on the bearers" },
  plant(file, spot) {
    for (const tie of file.ties ?? []) if (tie.id === spot) tie.bars = ["front", "back-upper"];
    return [spot];
  },
};
