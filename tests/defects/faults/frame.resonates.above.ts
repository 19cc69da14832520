import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.resonates",
  key: "above",
  slip: "a faster pump",
  spots: { "pump-base": "pump" },
  sizes: { sound: 6, faulty: 16 }, // Hz
  consequences: { "frame.resonates/below": "it swings in more than one way" },
  plant(file, spot, size) {
    for (const mass of file.masses ?? []) if (mass.id === spot) mass.shakes = size;
    return [spot];
  },
};
