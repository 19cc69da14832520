import { connections } from "../facts/connections.ts";
import { islands } from "../facts/islands.ts";
import { ref } from "../model/ref.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "bar.adrift",
  title: "Every bar is fastened to the rest of the frame",
  group: "drawing",
  level: "reject",
  basis: ["common practice"],
  needs: { islands, connections },
  criteria: {},
  messages: {
    alone: {
      text: "nothing fastens it to the rest of the frame",
      advice: "add the joint that holds it, or take the bar out",
    },
    unheld: {
      text: "its connectors find no slot to hold on to: nothing fastens it to the rest of the frame",
      advice: "put its connectors where their screws find slots: slot.mismatched says where they lie now",
    },
    adrift: {
      text: "nothing fastens {bars:parts} to the rest of the frame",
      advice: "add the joint that holds them, or take the bars out",
    },
  },
  *inspect({ islands: sets, connections: known }, _, say) {
    const [main, ...others] = sets;
    const judged = (bars: readonly string[], held: boolean) => {
      const [lead = "", second] = bars;
      if (second === undefined)
        return known.of(lead).length > 0
          ? say.unheld(ref("bar", lead), {}, held)
          : say.alone(ref("bar", lead), {}, held);
      return say.adrift(ref("bar", lead), { bars: bars.map((id) => ref("bar", id)) }, held);
    };
    // The largest set is the frame, unless nothing in it is fastened to anything.
    if (main) yield judged(main, main.length > 1 || others.length === 0);
    for (const bars of others) yield judged(bars, false);
  },
});
