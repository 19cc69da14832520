import { mm } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";
import { setFeet } from "../feet.ts";

export const fault: Fault = {
  rule: "foot.out-of-range",
  key: "short",
  slip: "the legs drawn too high over the floor",
  // Range of the foot, mm.
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
  sizes: { just: 0.1, far: 8 }, // mm beyond the range
  consequences: OVERLOAD,
  plant(file, spot, size) {
    const limit = Number(spot.split(" ")[1]);
    return setFeet(file, mm(file, limit + size));
  },
};
