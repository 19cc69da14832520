import { mm } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "astride",
  slip: "a latch given by the middle of the bars instead of their faces",
  spots: { "saw-guard": "door" },
  sizes: "plain",
  plant(file, _) {
    const [door] = file.doors ?? [];
    if (!door?.latch) throw new Error(`${file.title} has no latch`);
    const [x, , z] = door.latch.at;
    door.latch.at = [x, mm(file, 22.5), z];
    return [door.id];
  },
};
