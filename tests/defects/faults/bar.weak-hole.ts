import { addLoad, bar, mm, point, runsAlong } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.weak-hole",
  key: "weak",
  slip: "a wide hole drilled where a loaded bar bends most",
  spots: {
    "inch-bench": "shelf-1",
    "plant-display": "back",
    "pot-rack": "top-front",
    "roller-stand": "stretch-1",
    "timber-table": "stretcher",
    workstation: "foot-rail",
  },
  sizes: { sound: 0, faulty: 60000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const along = runsAlong(file, spot);
    const middle = (point(file, spot, "to")[along] - point(file, spot, "from")[along]) / 2;
    bar(file, spot).holes = [{ at: middle, on: "+y", diameter: mm(file, 12) }];
    addLoad(file, { case: "hoist", on: spot, force: file.units === "mm-N-kg" ? size : size / 4.4482216 });
    return [spot];
  },
};
