import { defineFact } from "../facts/fact.ts";
import { frameRef } from "../model/ref.ts";
import { defineRule } from "./shape/rule.ts";

const declared = defineFact<number>({
  id: "declared-loads",
  compute: (_, frame) => frame.loads.length + frame.masses.length,
});

export const rule = defineRule({
  id: "load.none",
  title: "The frame says what it has to carry",
  group: "drawing",
  level: "hold",
  basis: ["common practice"],
  needs: { declared },
  criteria: {},
  messages: {
    none: {
      text: "no load and no equipment is declared, so nothing can be said about strength",
      advice: 'add "loads" or "masses": what stands, hangs, pushes or leans on it',
    },
  },
  *inspect({ declared: count }, _, say) {
    yield say.none(frameRef, {}, count > 0);
  },
});
