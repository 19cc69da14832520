import { bar } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "stock.mixed",
  key: "slots",
  slip: "one bar drawn from another series",
  spots: {
    "braced-trestle": "brace-back 45x45-10",
    "seed-cabinet": "top-left 45x45-10",
    "timber-table": "bearer-2 45x45-10",
    workstation: "cross-2 40x40-8",
  },
  sizes: "plain",
  consequences: {
    "slot.mismatched": "its connectors do not fit it",
    "screw.misfit": "its screws do not fit it",
    "screw.overtight": "its lips bear another torque",
    "bar.clash": "it is wider",
    "joint.gap": "its faces lie elsewhere",
    ...OVERLOAD,
  },
  plant(file, spot) {
    const [id = "", profile = ""] = spot.split(" ");
    bar(file, id).profile = profile;
    return ["frame"];
  },
};
