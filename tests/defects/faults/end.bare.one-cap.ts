import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "end.bare",
  key: "bare",
  slip: "one cap left off",
  spots: {
    "braced-trestle": "front/to",
    "camera-rig": "bridge/to",
    "hoist-gantry": "cap-left/from",
    "inch-bench": "front/to",
    "incubator-stand": "back/from",
    "pot-rack": "top-front/to",
    "roller-stand": "left/to",
    "saw-guard": "top-front/to",
    "seed-cabinet": "top-back/from",
    "seed-trolley": "handle/to",
    "step-platform": "front/to",
    "timber-table": "back/to",
    workstation: "arm-1/from",
  },
  sizes: "plain",
  plant(file, spot) {
    const [id = "", end = ""] = spot.split("/");
    bar(file, id).ends = { [end]: { cap: "none" } };
    return [spot];
  },
};
