import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.sags",
  key: "sags",
  slip: "the two hinges of a door set close together",
  spots: { "saw-guard": "door" },
  sizes: { sound: 800, faulty: 45 }, // mm apart
  plant(file, spot, size) {
    for (const door of file.doors ?? []) {
      if (door.id !== spot) continue;
      for (const [i, hinge] of door.hinges.entries()) {
        const [x = 0, y = 0] = hinge.at as number[];
        hinge.at = [x, y, 700 + (i - 0.5) * size];
      }
    }
    return [spot];
  },
};
