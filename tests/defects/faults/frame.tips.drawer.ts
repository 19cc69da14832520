import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.tips",
  key: "tilt",
  slip: "a full drawer that comes out over the front feet",
  spots: { "seed-cabinet": "500 250 1000" },
  sizes: { sound: 0, faulty: 500 }, // mm
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const [x = 0, y = 0, z = 0] = spot.split(" ").map(Number);
    const on: [string, string] = ["top-front", "top-back"];
    const slides = { by: [0, -size - 1e-3, 0] as [number, number, number] };
    file.masses = [{ id: "seeds", mass: 40, centre: [x, y, z], on, slides }];
    return ["frame"];
  },
};
