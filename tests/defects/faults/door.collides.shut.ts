import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.collides",
  key: "shut",
  slip: "a lamp inside set so far forward that the door shuts into it",
  spots: { "saw-guard": "door" },
  sizes: { just: 0.2, far: 20 }, // mm that it stands in the door, whose back lies at y = 45
  plant(file, spot, size) {
    const centre = [400, 45 + 25 - size, 147.5];
    const lamp = { id: "lamp", mass: 0.2, centre, box: [50, 50, 50], on: ["low-front"] };
    file.masses = [...(file.masses ?? []), lamp as unknown as NonNullable<typeof file.masses>[number]];
    return [spot];
  },
};
