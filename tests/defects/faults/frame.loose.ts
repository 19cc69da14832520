import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.loose",
  key: "moves",
  slip: "feet under two legs only",
  spots: {
    "inch-bench": "leg-1 leg-2",
    "incubator-stand": "leg-1 leg-2",
    "timber-table": "leg-1 leg-2",
    workstation: "leg-1 leg-2",
  },
  sizes: "plain",
  plant(file, spot) {
    const stand = file.stands?.[0];
    if (stand) stand.bars = spot.split(" ") as typeof stand.bars;
    return [];
  },
};
