import { mm } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "apart",
  slip: "a latch left where the door used to shut",
  spots: { "saw-guard": "door" },
  sizes: { sound: 0, faulty: 300 }, // mm
  plant(file, _, size) {
    const [door] = file.doors ?? [];
    if (!door?.latch) throw new Error(`${file.title} has no latch`);
    // Out of the plane of the door, towards the operator.
    const [x, y, z] = door.latch.at;
    door.latch.at = [x, Number(y) - mm(file, size), z];
    return [door.id];
  },
};
