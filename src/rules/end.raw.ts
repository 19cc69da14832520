import { touchHeight } from "../criteria/touch-height.ts";
import { ends } from "../facts/ends.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "end.raw",
  title: "Cut ends are deburred",
  group: "safety",
  level: "hold",
  basis: ["common practice", "ISO 12100:2010, 6.2.2.1"],
  needs: { ends },
  criteria: { reach: touchHeight },
  messages: {
    raw: {
      text: "a cut end stays as sawn: its burr cuts hands and jams nuts in the slot",
      advice: "deburr it before assembly, with gloves and eye protection on",
    },
  },
  *inspect({ ends: all }, { reach }, say) {
    for (const state of all) {
      if (state.end.edge === "deburred") yield say.raw(state.ref, {}, true);
      else if (state.height > reach.value) yield notApplicable(state.ref, "out of reach");
      else yield say.raw(state.ref, {}, false);
    }
  },
});
