import { AT_CROSS_BARS } from "../cross-bars.ts";
import { addLoad, unfasten } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "load.none",
  key: "lost",
  slip: "a load on a bar that nothing fastens yet",
  spots: AT_CROSS_BARS,
  sizes: "plain",
  consequences: { "bar.adrift": "nothing fastens the bar" },
  plant(file, spot) {
    unfasten(file, `${spot}/from`, `${spot}/to`);
    addLoad(file, { id: "hook", case: "hook", on: spot, force: file.units === "mm-N-kg" ? 50 : 10 });
    return ["hook"];
  },
};
