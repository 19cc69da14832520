import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.tips",
  key: "tilt",
  slip: "heavy equipment set too high",
  // Over the middle of the feet, which bears it: x, y, and the bars that carry it.
  spots: {
    "braced-trestle": "500 300 bearer-1 bearer-2",
    "roller-stand": "1200 300 spacer-1 spacer-2 spacer-3",
    "step-platform": "450 350 cross-1 cross-2 cross-3",
    "timber-table": "600 350 bearer-1 bearer-2 bearer-3",
  },
  sizes: { sound: 900, faulty: 9000 }, // mm over the floor
  consequences: { "frame.tips": "what tips by a tilt is soon pushed over", ...OVERLOAD },
  plant(file, spot, size) {
    const [x, y, ...on] = spot.split(" ");
    file.masses = [
      ...(file.masses ?? []),
      { id: "hopper", mass: 60, centre: [Number(x), Number(y), size], on: on as [string, ...string[]] },
    ];
    return ["frame"];
  },
};
