import { acting } from "../facts/acting.ts";
import { defineFact } from "../facts/fact.ts";
import { repeatedLoads } from "../facts/repeated-loads.ts";
import { frameRef, ref } from "../model/ref.ts";
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
  needs: { declared, acting, repeatedLoads },
  criteria: {},
  messages: {
    none: {
      text: "no load and no equipment is declared, so nothing can be said about strength",
      advice: 'add "loads" or "masses": what stands, hangs, pushes or leans on it',
    },
    lost: {
      text: "nothing carries this load: no strength is judged under it",
      advice: "let it act on a bar that is fastened to the frame, or on a panel that bars hold",
    },
    twice: {
      text: "{again:part} is the same load in the same case: {on:part} bears both",
      advice: "take one of them out, or say the whole in one; a copy brings the loads of what it copies",
      level: "note",
    },
  },
  *inspect({ declared: count, acting: { lost }, repeatedLoads: repeated }, _, say) {
    yield say.none(frameRef, {}, count > 0);
    for (const id of new Set(lost)) yield say.lost(ref("load", id), {}, false);
    for (const { load, again, on } of repeated) yield say.twice(load.ref, { again: again.ref, on }, false);
  },
});
