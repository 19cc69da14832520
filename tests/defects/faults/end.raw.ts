import { AT_CROSS_BARS } from "../cross-bars.ts";
import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "end.raw",
  key: "raw",
  slip: "an end left as sawn",
  spots: AT_CROSS_BARS,
  sizes: "plain",
  plant(file, spot) {
    bar(file, spot).ends = { to: { edge: "raw" } };
    return [`${spot}/to`];
  },
};
