import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.collides",
  key: "floor",
  slip: "a box hung before the door down into the floor",
  spots: { "saw-guard": "door" },
  sizes: { just: 0.2, far: 20 }, // mm below the floor
  consequences: { "door.sags/floor": "what stands in the floor has no room over it" },
  plant(file, spot, size) {
    const centre = [400, -30, 60 - size];
    const box = { id: "chute", mass: 0.2, centre, box: [50, 50, 120], on: ["door-foot"] };
    file.masses = [...(file.masses ?? []), box as unknown as NonNullable<typeof file.masses>[number]];
    return [spot];
  },
};
