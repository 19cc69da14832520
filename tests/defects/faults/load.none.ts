import { AT_CROSS_BARS } from "../cross-bars.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "load.none",
  key: "none",
  slip: "the loads not entered yet",
  spots: AT_CROSS_BARS,
  sizes: "plain",
  plant(file) {
    delete file.loads;
    delete file.masses;
    delete file.cases;
    return ["frame"];
  },
};
