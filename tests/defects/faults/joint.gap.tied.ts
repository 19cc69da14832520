import { mm, placeBar, point } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "joint.gap",
  key: "tied",
  slip: "the upper bar of a tied beam drawn a little too high",
  spots: { "timber-table": "front-upper" },
  sizes: { just: 0.52, far: 3 }, // mm of 0.5 mm
  consequences: {
    "screw.misfit/short": "the screws of the ties reach across the gap",
    "bar.skewed": "the bearers run from the one bar to the other",
    "slot.mismatched": "the bearers' brackets lie between their slots",
  },
  plant(file, spot, size) {
    placeBar(file, spot, 2, point(file, spot, "from")[2] + mm(file, size));
    return ["tie-front"];
  },
};
