import { panelSupports } from "../facts/panel-support.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "panel.unsupported",
  title: "Panels stay on what carries them",
  group: "panels",
  level: "reject",
  basis: ["statics of a loose sheet on its bars", "common practice"],
  needs: { panelSupports },
  criteria: {},
  messages: {
    slides: {
      text: "of its edges in slots ({held:count}) no two lie across from each other: it slides out",
      advice: "hold it in slots on two opposite sides at least, or screw it to a face",
    },
    falls: {
      text: "its middle hangs {past:length} outside what carries it: it falls off",
      advice: "put a bar under its other side",
    },
  },
  *inspect({ panelSupports: { laid, slots } }, _, say) {
    for (const { panel, held, opposite } of slots) yield say.slides(panel.ref, { held: si(held, "count") }, opposite);
    for (const { panel, inside } of laid)
      yield say.falls(panel.ref, { past: si(Math.max(0, -inside), "length") }, inside >= 0);
  },
});
