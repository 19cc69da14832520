import { buildOrder } from "../facts/build-order.ts";
import { ringWords } from "../facts/ring-words.ts";
import { frameRef } from "../model/ref.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "build.deadlock",
  title: "There is an order in which the frame can be built",
  group: "access and build",
  level: "hold",
  basis: ["geometry: an order of taking apart, read backwards", "common practice"],
  needs: { order: buildOrder },
  criteria: {},
  messages: {
    ring: {
      text: "no order of building puts {parts:parts} together: {why:word}",
      advice: "turn the screws of one of them to a face that stays open, or leave one side of the panel free",
    },
    group: {
      text: "{group:part} cannot be built on its own and put in whole",
      advice: "leave the part out of the group that has to go in last, or drop the group",
    },
    built: {
      text: "{group:part} comes built and cannot be put in whole",
      advice: 'put in what stands in its way after it, or take it apart and write the group without "built"',
    },
    apart: {
      text: "{group:part} is no piece: nothing in it joins {parts:parts} to the rest of it",
      advice: "name what joins them in the group, or drop the group",
    },
  },
  *inspect({ order: { deadlock, undone, scattered } }, _, say) {
    const [first] = deadlock?.ring ?? [];
    const parts = deadlock?.ring.map((link) => link.part) ?? [];
    yield say.ring(first?.part ?? frameRef, { parts, why: ringWords(deadlock?.ring ?? []) }, deadlock === undefined);
    for (const { group, built } of undone) {
      yield built ? say.built(group, { group }, false) : say.group(group, { group }, false);
    }
    for (const { group, apart } of scattered) yield say.apart(group, { group, parts: apart }, false);
  },
});
