import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "guard.within-reach",
  key: "over",
  slip: "the roof left off a guard that is reached over",
  spots: { "saw-guard": "roof" },
  sizes: "plain",
  plant(file, spot) {
    file.panels = (file.panels ?? []).filter(({ id }) => id !== spot);
    return ["blade"];
  },
};
