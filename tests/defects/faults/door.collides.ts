import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.collides",
  key: "strikes",
  slip: "the door let open past its own post, which it lies against at 180°",
  spots: { "saw-guard": "door" },
  sizes: { just: 181, far: 270 },
  plant(file, spot, size) {
    for (const door of file.doors ?? []) if (door.id === spot) door.swing = [0, size];
    return [spot];
  },
};
