import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.resonates",
  key: "below",
  slip: "a pump a little faster than the frame swings",
  spots: { "pump-base": "pump" },
  sizes: { sound: 29, faulty: 20 }, // Hz
  consequences: { "frame.resonates/above": "the next frequency lies close" },
  plant(file, spot, size) {
    for (const mass of file.masses ?? []) if (mass.id === spot) mass.shakes = size;
    return [spot];
  },
};
