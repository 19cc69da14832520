import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "tie.slips",
  key: "slips",
  slip: "heavier boards on tied beams",
  spots: { "timber-table": "bearer-2" },
  sizes: { sound: 0, faulty: 20000 }, // N
  consequences: OVERLOAD,
  plant(file, spot, size) {
    addLoad(file, { case: "hoist", on: spot, force: size });
    return ["tie-front"];
  },
};
