import { directionWords, runsAlong } from "../facts/axis-words.ts";
import { loaded } from "../facts/loaded.ts";
import { tubes } from "../facts/tubes.ts";
import { turning } from "../facts/turning.ts";
import { ref } from "../model/ref.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "joint.turns",
  title: "No part turns about a lone screw",
  group: "joints",
  level: "hold",
  basis: ["common practice", "rigid-body mechanics: null space of the joint constraints"],
  needs: { turning, loaded, tubes },
  criteria: {},
  messages: {
    turns: {
      text: "can turn about {axis:word}: at {joints:parts} only the friction of one screw holds {bars:parts}",
      advice: "add a second fastener out of line with the first, or a bracket with two screws on each leg",
    },
    loaded: {
      text: "can turn about {axis:word} under its load: at {joints:parts} only the friction of one screw holds {bars:parts}",
      advice: "add a second fastener out of line with the first, or a bracket with two screws on each leg",
      level: "reject",
    },
  },
  *inspect({ turning: found, loaded: loads, tubes: bars }, _, say) {
    const turns = new Set(found.parts.flatMap((part) => part.bars));
    for (const { bars: moving, kind, direction, point, joints } of found.parts) {
      const [first] = moving;
      const lead = first === undefined ? undefined : bars.get(first);
      if (!lead) continue;
      const own = kind === "turn" && moving.length === 1 && runsAlong(lead, direction, point);
      const axis = own ? "its own length" : `an axis along ${directionWords(direction)}`;
      const values = { bars: moving.map((id) => ref("bar", id)), axis, joints: joints.map((id) => ref("joint", id)) };
      if (moving.some((bar) => loads.has(bar))) yield say.loaded(lead.bar.ref, values, false);
      else yield say.turns(lead.bar.ref, values, false);
    }
    for (const { bar } of bars.values()) {
      if (!turns.has(bar.ref.id)) yield say.turns(bar.ref, { bars: [bar.ref], axis: "", joints: [] }, true);
    }
  },
});
