import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "foot.overloaded",
  key: "overloaded",
  slip: "heavier equipment than the feet were chosen for",
  spots: {
    "braced-trestle": "500 300 1000 bearer-1 bearer-2",
    "seed-trolley": "400 250 250 low-cross-1 low-cross-2",
    "timber-table": "600 350 900 bearer-1 bearer-2 bearer-3",
    workstation: "600 350 800 cross-1 cross-2 cross-3",
  },
  sizes: { sound: 0, faulty: 3000 }, // kg
  consequences: { "frame.tips": "the weight stands high", ...OVERLOAD },
  plant(file, spot, size) {
    const [x, y, z, ...on] = spot.split(" ");
    file.masses = [
      ...(file.masses ?? []),
      { id: "safe", mass: size + 1e-3, centre: [Number(x), Number(y), Number(z)], on: on as [string, ...string[]] },
    ];
    return [];
  },
};
