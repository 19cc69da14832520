import { hanging } from "../facts/hanging.ts";
import { loaded } from "../facts/loaded.ts";
import { ref } from "../model/ref.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "joint.hung",
  title: "Weight sits bar on bar where it can",
  group: "joints",
  level: "hold",
  basis: ["common practice"],
  needs: { hanging, loaded },
  criteria: {},
  messages: {
    hung: {
      text: "{bar:bar} hangs its load on the fasteners of {joint:joint}, though {onto:bar} could end under it and carry it",
      advice: "end the post under the bar, so that the weight passes bar on bar and the screws only hold it in place",
      // Which share of their capacity the fasteners use is not known here: the arrangement alone is only worth a note.
      level: "note",
    },
  },
  *inspect({ hanging: joints, loaded: loads }, _, say) {
    for (const { joint, bar, onto, rests, seatPossible } of joints) {
      const values = { bar: ref("bar", bar), joint, onto: ref("bar", onto) };
      if (rests) yield say.hung(joint, values, true);
      else if (!loads.has(bar)) yield notApplicable(joint, "carries no declared load");
      else if (!seatPossible) yield notApplicable(joint, "no seat is possible there");
      else yield say.hung(joint, values, false);
    }
  },
});
