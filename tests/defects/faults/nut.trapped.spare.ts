import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "nut.trapped",
  key: "spare",
  slip: "more spare nuts asked for in a bar than its slots hold",
  spots: { "inch-bench": "shelf-1", "pot-rack": "front", workstation: "cross-2" },
  sizes: { just: 80, far: 100 },
  plant(file, spot, size) {
    bar(file, spot).criteria = { "spare-nuts": size };
    return [spot];
  },
};
