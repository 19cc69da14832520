import { addLoad, moveEnd } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.sags",
  key: "hangs",
  slip: "a bar drawn far out past its leg for a pulley",
  spots: { "pump-base": "front" },
  sizes: { sound: 0, faulty: 4000 }, // mm
  consequences: { "frame.resonates": "so long an end swings by itself near the strokes of the pump", ...OVERLOAD },
  plant(file, spot, size) {
    moveEnd(file, spot, "to", 0, size);
    addLoad(file, { case: "pulley", on: spot, at: 790 + size, force: 300 });
    return [spot];
  },
};
