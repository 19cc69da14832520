import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.sags",
  key: "floor",
  slip: "a box hung before the door almost down to the floor",
  spots: { "saw-guard": "door" },
  // mm of room over the floor: under what the door comes down where it hangs, and next to none.
  sizes: { sound: 20, faulty: 0.2 },
  plant(file, spot, size) {
    const centre = [690, -30, 60 + size];
    const box = { id: "chute", mass: 0.2, centre, box: [50, 50, 120], on: ["door-foot"] };
    file.masses = [...(file.masses ?? []), box as unknown as NonNullable<typeof file.masses>[number]];
    return [spot];
  },
};
