import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "tie.slips",
  key: "slips",
  slip: "ties at the ends only",
  spots: { "timber-table": "tie-front" },
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot) {
    for (const tie of file.ties ?? []) if (tie.id === spot) tie.at = [150, 1050];
    return [spot];
  },
};
