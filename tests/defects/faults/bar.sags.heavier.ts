import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.sags",
  key: "sags",
  slip: "a heavier load hung on the middle of a bar",
  spots: {
    "inch-bench": "shelf-1",
    "plant-display": "back",
    "pot-rack": "front-up2",
    "roller-stand": "stretch-1",
    "timber-table": "stretcher",
    workstation: "foot-rail",
  },
  sizes: { sound: 0, faulty: 20000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const force = file.units === "mm-N-kg" ? size : size / 4.4482216; // lbf
    addLoad(file, { case: "hoist", on: spot, force });
    return [spot];
  },
};
