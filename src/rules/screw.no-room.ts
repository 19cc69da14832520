import { headRoom } from "../facts/head-room.ts";
import { toolRoom } from "../facts/tool-room.ts";
import { goesIn, mostInTheWay } from "../facts/tool-trial.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "screw.no-room",
  title: "A tool reaches every screw and can turn",
  group: "access and build",
  level: "hold",
  basis: [
    "ISO 2936:2014: arms of hexagon socket screw keys",
    "ISO 4762, ISO 7380-1, ISO 10642: heads and sockets",
    "geometry: a hexagon comes round every 60°",
  ],
  needs: { toolRoom, headRoom },
  criteria: {},
  messages: {
    entry: {
      text: "{room:length} is free in front of {screw:screw} before {part:part}: {tool:word} does not go in",
      advice: "move the connector along its slot, or put it on another face",
      measures: "length",
      sense: "at least",
    },
    swing: {
      text: "{tool:word} turns {arc:angle} in {screw:screw}, no further for {part:part}",
      advice: "move the connector along its slot, or put it on another face",
      measures: "angle",
      sense: "at least",
    },
  },
  *inspect({ toolRoom: rooms, headRoom: near }, _, say) {
    const heads = new Set(near.filter(({ keyToHead }) => keyToHead < 0).map(({ screw }) => screw.ref.id));
    for (const { screw, best } of rooms) {
      const { ref } = screw;
      if (heads.has(ref.id)) {
        yield notApplicable(ref, "screw.crowded says which head is in the way");
        continue;
      }
      if (!best) {
        yield undecided(ref, "a tool in the kit of this size, strong and long enough");
        continue;
      }
      const { tool, by } = best.way;
      const words = `${tool.name} by its ${by}`;
      const basis = `tool ${tool.name}: ${tool.source}`;
      if (Number.isFinite(best.straight)) {
        const room = si(best.straight, "length");
        const limit = { value: si(best.asks, "length"), from: "stock" as const, basis };
        yield say.entry(ref, { room, screw: ref, part: best.stopper ?? ref, tool: words }, { measured: room, limit });
      }
      if (!goesIn(best)) continue;
      const arc = si(best.swing, "angle");
      const limit = { value: tool.swing, from: "stock" as const, basis };
      const part = mostInTheWay(best) ?? ref;
      yield say.swing(ref, { tool: words, arc, screw: ref, part }, { measured: arc, limit });
    }
  },
});
