import { softer } from "../brackets.ts";
import { unfasten } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "frame.sways",
  key: "sways",
  slip: "the low rails left out, on plain brackets",
  spots: { workstation: "low-1 low-2 foot-rail back-rail" },
  sizes: "plain",
  consequences: { "frame.tips": "it is lighter", ...OVERLOAD },
  plant(file, spot) {
    const gone = spot.split(" ");
    unfasten(file, ...gone.flatMap((id) => [`${id}/from`, `${id}/to`]));
    file.bars = file.bars.filter(({ id }) => !gone.includes(id)) as typeof file.bars;
    softer(file);
    return ["frame"];
  },
};
