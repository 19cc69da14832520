import { mm } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "foot.out-of-range",
  key: "apart",
  slip: "feet set to another height than the legs are drawn to",
  spots: {
    "braced-trestle": "28 52",
    "camera-rig": "22 34",
    "inch-bench": "27.94 53.34",
    "roller-stand": "28 52",
    "seed-cabinet": "28 52",
    "step-platform": "28 52",
    "timber-table": "28 52",
    workstation: "22 40",
  },
  sizes: { just: 1.05, far: 4 }, // mm of 1 mm
  plant(file, _, size) {
    const stand = file.stands?.[0];
    if (typeof stand?.raise !== "number") throw new Error("the feet are set to a height");
    stand.raise += mm(file, size);
    return stand.bars.map((leg) => `${leg}.foot`);
  },
};
