import { looseParts } from "../facts/loose-parts.ts";
import { response } from "../facts/response.ts";
import { frameRef, ref } from "../model/ref.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

/** Ways of moving that are told; a bar that nothing holds has six. */
const TOLD = 2;

export const rule = defineRule({
  id: "frame.loose",
  title: "No part of the frame moves freely",
  group: "frame",
  level: "reject",
  basis: ["statics: motions that no joint, foot or bar resists (docs/method)"],
  needs: { response, looseParts },
  criteria: {},
  messages: {
    moves: {
      text: "nothing stops {bars:parts} from moving: {ways:word}",
      advice: "add the bracket, brace or foot that holds it; a freedom that is meant is declared as a hinge or pivot",
    },
  },
  *inspect({ response: found, looseParts: parts }, _, say) {
    if (found.kind === "lacking") {
      yield notApplicable(frameRef, found.why);
      return;
    }
    if (found.kind === "solved") yield say.moves(frameRef, { bars: [], ways: "" }, true);
    for (const { bars, ways } of parts) {
      const [lead] = bars;
      if (lead === undefined) continue;
      const at = ref("bar", lead);
      const rest = ways.length - TOLD;
      const told = ways.slice(0, TOLD).join("; ");
      const more = rest > 0 ? `; and ${rest} more ${rest === 1 ? "way" : "ways"}` : "";
      yield say.moves(at, { bars: bars.map((id) => ref("bar", id)), ways: `${told}${more}` }, false);
    }
  },
});
