import { AT_CROSS_BARS } from "../cross-bars.ts";
import { unfasten } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.adrift",
  key: "alone",
  slip: "a cross bar left out of the joints",
  spots: AT_CROSS_BARS,
  sizes: "plain",
  consequences: { "load.none/lost": "nothing carries the load on that bar" },
  plant(file, spot) {
    unfasten(file, `${spot}/from`, `${spot}/to`);
    return [spot];
  },
};
