import { AT_CROSS_BARS } from "../cross-bars.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "end.raw",
  key: "raw",
  slip: "the whole frame left as sawn",
  spots: AT_CROSS_BARS,
  sizes: "plain",
  plant(file, spot) {
    file.defaults = { ...file.defaults, ends: "raw" };
    return [`${spot}/from`, `${spot}/to`];
  },
};
