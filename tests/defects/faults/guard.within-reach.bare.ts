import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "guard.within-reach",
  key: "bare",
  slip: "a zone drawn so large that it stands out of the guard",
  spots: { "saw-guard": "blade" },
  sizes: "plain",
  consequences: { "guard.within-reach": "the other sides are then reached round" },
  plant(file, spot) {
    for (const zone of file.zones ?? [])
      if (zone.id === spot)
        zone.box = [
          [270, 270, 950],
          [900, 480, 1100],
        ];
    return [spot];
  },
};
