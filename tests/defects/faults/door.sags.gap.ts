import { barOf } from "../../rules/base-frames.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "door.sags",
  key: "drags",
  slip: "the stiles of a door drawn down almost onto the sill",
  spots: { "saw-guard": "door" },
  // mm of room over the sill: under the typical drop of 0.98 mm, and next to none.
  sizes: { just: 0.97, far: 0.2 },
  plant(file, spot, size) {
    const sill = 100 + 45 / 2;
    for (const id of ["door-hung", "door-free"]) {
      const bar = barOf(file, id);
      const [x = 0, y = 0] = bar.from as number[];
      bar.from = [x, y, sill + size];
    }
    return [spot];
  },
};
