import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "guard.within-reach",
  key: "through",
  slip: "a hazard nearer to the gap over the floor than an arm reaches",
  spots: { "saw-guard": "blade" },
  // From the gap, 77.5 mm over the floor, to the blade: 850 mm, of which 247.5 across from the side nearest to it.
  sizes: { just: 1, far: 500 }, // mm lower than that
  plant(file, spot, size) {
    const low = 77.5 + Math.sqrt(850 ** 2 - 247.5 ** 2) - size;
    for (const zone of file.zones ?? [])
      if (zone.id === spot)
        zone.box = [
          [270, 270, low],
          [530, 480, 1100],
        ];
    return [spot];
  },
};
