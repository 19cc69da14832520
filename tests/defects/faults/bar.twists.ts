import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.twists",
  key: "twists",
  slip: "a motor whose torque winds up the bar it is bolted to",
  spots: {
    "plant-display": "back",
    "pot-rack": "front-up2",
    "roller-stand": "stretch-1",
    "timber-table": "stretcher",
    workstation: "foot-rail",
  },
  sizes: { sound: 0, faulty: 120 }, // N·m
  consequences: OVERLOAD,
  plant(file, spot, size) {
    // Screwed down, so that the bar winds up before the frame lifts off.
    for (const stand of file.stands ?? []) stand.hold = "anchored";
    // N·m or lbf·in; about the bar's own length, which runs along x.
    addLoad(file, {
      case: "motor",
      on: spot,
      moment: file.units === "mm-N-kg" ? size : size / 0.11298483,
      direction: "+x",
    });
    return [spot];
  },
};
