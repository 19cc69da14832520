import { bar, mm } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "hole.near-edge",
  key: "hole",
  slip: "a hole for a hook close to the end of a bar",
  spots: {
    "braced-trestle": "front",
    "camera-rig": "bridge",
    "inch-bench": "front",
    "pot-rack": "top-front",
    "step-platform": "front",
    "timber-table": "front-upper",
    workstation: "shelf-back",
  },
  sizes: { just: 1.19, far: 0.5 }, // diameters of 1.2
  plant(file, spot, size) {
    const diameter = mm(file, 5);
    bar(file, spot).holes = [{ at: size * diameter, on: "+y", diameter }];
    return [spot];
  },
};
