import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "guard.within-reach",
  key: "body",
  slip: "a panel left out of the guard",
  spots: { "saw-guard": "back-upper" },
  sizes: "plain",
  plant(file, spot) {
    file.panels = (file.panels ?? []).filter(({ id }) => id !== spot);
    return ["blade"];
  },
};
