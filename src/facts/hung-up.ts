import { bodies } from "./bodies.ts";
import { TOUCH } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { offTheFloor, standings } from "./standings.ts";

/** Whether the frame hangs on walls or ceilings alone: every stand is anchored there, and no bar reaches down to the floor. */
export const hungUp = defineFact<boolean, { bodies: typeof bodies; standings: typeof standings }>({
  id: "hung-up",
  needs: { bodies, standings },
  compute({ bodies: all, standings: known }, frame) {
    if (known.all.length === 0 || !known.all.every(offTheFloor)) return false;
    const heights = [...all.values()].flatMap((body) => body.prism?.vertices.map(([, , z]) => z) ?? []);
    return heights.every((z) => z > frame.floor.z + TOUCH);
  },
});
