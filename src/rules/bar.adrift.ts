import { islands } from "../facts/islands.ts";
import { ref } from "../model/ref.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "bar.adrift",
  title: "Every bar is fastened to the rest of the frame",
  group: "drawing",
  level: "reject",
  basis: ["common practice"],
  needs: { islands },
  criteria: {},
  messages: {
    adrift: {
      text: "nothing fastens {bars:parts} to the rest of the frame",
      advice: "add the joint that holds it, or take the bar out",
    },
  },
  *inspect({ islands: sets }, _, say) {
    const [main, ...others] = sets;
    if (!main) return;
    const [first] = main;
    if (first !== undefined)
      yield say.adrift(
        ref("bar", first),
        { bars: main.map((id) => ref("bar", id)) },
        main.length > 1 || others.length === 0,
      );
    for (const bars of others) {
      const [lead] = bars;
      if (lead !== undefined) yield say.adrift(ref("bar", lead), { bars: bars.map((id) => ref("bar", id)) }, false);
    }
  },
});
