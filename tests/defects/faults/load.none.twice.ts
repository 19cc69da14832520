import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "load.none",
  key: "twice",
  slip: "a load written once for all bearers and once more for one of them",
  spots: { "timber-table": "bearer-2" },
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot) {
    addLoad(file, { id: "middle", case: "boards", on: spot, line: 0.45 });
    return [spot];
  },
};
