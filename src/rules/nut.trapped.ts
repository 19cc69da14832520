import { spareNuts } from "../criteria/spare-nuts.ts";
import { faceNormal } from "../facts/axes.ts";
import { facingWords } from "../facts/axis-words.ts";
import { bodies } from "../facts/bodies.ts";
import { nutEntries } from "../facts/nut-entries.ts";
import { slotRoom } from "../facts/slot-room.ts";
import { frameRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "nut.trapped",
  title: "Every nut gets into its slot",
  group: "access and build",
  level: "hold",
  basis: ["geometry", "common practice: nuts are laid into closed slots before the bar is closed in"],
  needs: { nutEntries, slotRoom, bodies },
  criteria: { spare: spareNuts },
  messages: {
    trapped: {
      text: "{nut:nut} slides in from an end, and both ends of its slot in {bar:bar} are closed in {group:part}, which comes built",
      advice: 'take a drop-in nut ("nut": "drop-in"), or have the nut laid in before {group:part} is put together',
    },
    spare: {
      text: "slot {slot:word} of {bar:bar} has room for {room:count} more nuts",
      advice: "ask for fewer spare nuts in it, or move a connector",
      measures: "count",
      sense: "at least",
      level: "note",
    },
  },
  *inspect({ nutEntries: entries, slotRoom: rooms, bodies: all }, { spare }, say) {
    for (const entry of entries) {
      const bar = ref("bar", entry.bar);
      const group = entry.trappedBy;
      yield say.trapped(entry.ref, { nut: entry.ref, bar, group: group ?? frameRef }, group === undefined);
    }
    for (const { bar, face, slot, more } of rooms) {
      const body = all.get(bar.id);
      const name = `${face}${slot}`;
      const shown = body ? facingWords(name, faceNormal(body.axes, face)) : name;
      const room = si(more, "count");
      yield say.spare(bar, { slot: shown, bar, room }, { measured: room, limit: spare.at(bar) });
    }
  },
});
