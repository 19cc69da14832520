import { softer } from "../brackets.ts";
import { unfasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.unbraced",
  key: "unbraced",
  slip: "plain brackets, and the rail that kept the legs apart left out",
  spots: { workstation: "back-rail" },
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot) {
    unfasten(file, `${spot}/from`, `${spot}/to`);
    file.bars = file.bars.filter(({ id }) => id !== spot) as typeof file.bars;
    softer(file);
    return ["frame"];
  },
};
