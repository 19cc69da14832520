import { touchHeight } from "../criteria/touch-height.ts";
import { type EndReach, endReach } from "../facts/end-reach.ts";
import { meetingWords } from "../facts/end-words.ts";
import { type EndState, ends } from "../facts/ends.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

/** Where people meet a burr and what it does, beside jamming nuts. */
function harmOf(end: EndState, reach: EndReach): { readonly where: string; readonly harm: string } {
  if (end.capped) return { where: "", harm: "keeps its cap from lying flat" };
  if (end.open === 0) return { where: "", harm: "holds it off what it meets" };
  if (reach.keptOff(end)) return { where: "", harm: "cuts whoever builds or mends the frame" };
  return { where: `, ${meetingWords([end], reach)}`, harm: "cuts skin" };
}

export const rule = defineRule({
  id: "end.raw",
  title: "Cut ends are deburred",
  group: "safety",
  level: "hold",
  basis: ["common practice", "ISO 12100:2010, 6.2.2.1"],
  needs: { ends, endReach },
  criteria: { reach: touchHeight },
  messages: {
    raw: {
      text: "a cut end stays as sawn{where:word}: its burr {harm:word} and jams nuts in the slot",
      advice: "deburr it before assembly, with gloves and eye protection on",
    },
  },
  *inspect({ ends: all, endReach: reaching }, { reach }, say) {
    for (const state of all) {
      if (state.end.edge === "deburred") yield say.raw(state.ref, { where: "", harm: "" }, true);
      else if (state.height > reach.value) yield notApplicable(state.ref, "out of reach");
      else yield say.raw(state.ref, harmOf(state, reaching), false);
    }
  },
});
