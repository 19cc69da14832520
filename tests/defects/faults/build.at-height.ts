import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "build.at-height",
  key: "high",
  slip: "a low corner named as one piece, so that the tall sides are no longer built on the bench",
  spots: { "plant-display": "left", "pot-rack": "left" },
  sizes: "plain",
  plant(file, spot) {
    file.groups = [{ id: "corner", parts: ["post-1", "post-4", spot] }];
    return ["frame"];
  },
};
