import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "stand.misfit",
  key: "sideways",
  slip: "feet listed under the rails instead of the legs",
  spots: { "timber-table": "front,back", "inch-bench": "front,back" },
  sizes: "plain",
  consequences: {
    "foot.out-of-range": "the rails lie far over the floor",
    "end.bare": "nothing covers the ends of the legs",
    "frame.loose": "on two feet it falls over",
  },
  plant(file, spot) {
    const bars = spot.split(",");
    const stand = file.stands?.[0];
    if (!stand) throw new Error(`${file.title} has no feet`);
    stand.bars = bars as typeof stand.bars;
    return bars.map((bar) => `${bar}.foot`);
  },
};
