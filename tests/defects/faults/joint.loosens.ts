import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.loosens",
  key: "loosens",
  slip: "locks forgotten where it shakes, and heavier equipment",
  spots: { "pump-base": "pump bearer-1 bearer-2", "seed-trolley": "crate low-cross-1 low-cross-2" },
  sizes: { sound: 0, faulty: 4000 }, // kg
  consequences: { "frame.resonates": "heavier, it swings more slowly", ...OVERLOAD },
  plant(file, spot, size) {
    delete file.defaults;
    const [, ...on] = spot.split(" ");
    file.masses = [
      ...(file.masses ?? []),
      { id: "crate", mass: size + 1e-3, centre: [400, 250, 300], on: on as [string, ...string[]] },
    ];
    return [];
  },
};
