import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.tips",
  key: "push",
  slip: "heavy equipment bolted to the front of a tall frame",
  spots: { "seed-cabinet": "top-front low-front" },
  sizes: "plain",
  consequences: { "frame.tips": "what a push tips is near to tipping by a tilt" },
  plant(file, spot) {
    // 190 mm in front of the middle between the feet, 460 mm apart, and as high as the push.
    file.masses = [{ id: "screen", mass: 60, centre: [500, 60, 1000], on: spot.split(" ") as [string, ...string[]] }];
    return ["frame"];
  },
};
