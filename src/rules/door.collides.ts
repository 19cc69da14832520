import type { Limit } from "../criteria/criterion.ts";
import { doorSwings } from "../facts/door-swings.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "door.collides",
  title: "Doors open as far as they are drawn to",
  group: "safety",
  level: "reject",
  basis: ["geometry: separating axes of the parts, turned in steps no gap can be lost in"],
  needs: { doorSwings },
  criteria: {},
  messages: {
    shut: {
      text: "its {by:part} takes the same room as {on:part} when it is shut",
      advice: "leave a gap round the door, or list the part with the door if it swings with it",
    },
    strikes: {
      text: "its {by:part} strikes {on:part} {turn:angle} from shut; it is drawn to open {swing:angle}",
      advice: "move one of them, widen the gap, or give the door a stop and a smaller swing",
      measures: "angle",
      sense: "at least",
    },
    floor: {
      text: "its {by:part} strikes the floor {turn:angle} from shut; it is drawn to open {swing:angle}",
      advice: "hang it higher, or give it a stop and a smaller swing",
    },
    doors: {
      text: "its {by:part} strikes {on:part} of {other:part} {turn:angle} from shut while that is open; it is drawn to open {swing:angle}",
      advice: "give one of the doors a stop and a smaller swing, or hang it on its other side",
    },
  },
  *inspect({ doorSwings: all }, _, say) {
    for (const { door, swing: full, first, whileOpen } of all) {
      const swing = si(full, "angle");
      const limit: Limit<"angle"> = { value: swing, from: "frame", basis: "swing of the door" };
      const turn = si(first?.turn ?? full, "angle");
      const by = first?.by ?? door.ref;
      if (first && !first.on) yield say.floor(door.ref, { by, turn, swing }, false);
      else if (first?.on && first.turn === 0) yield say.shut(door.ref, { by, on: first.on }, false);
      else yield say.strikes(door.ref, { by, on: first?.on ?? by, turn, swing }, { measured: turn, limit });
      if (!whileOpen) continue;
      const { by: part, on, other } = whileOpen;
      yield say.doors(door.ref, { by: part, on: on ?? other, other, turn: si(whileOpen.turn, "angle"), swing }, false);
    }
  },
});
