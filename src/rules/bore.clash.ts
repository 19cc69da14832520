import { defineCriterion } from "../criteria/criterion.ts";
import { boredHoles } from "../facts/bored-holes.ts";
import { holeWords } from "../facts/hole-words.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const holeWall = defineCriterion({
  name: "hole-wall",
  of: "bars",
  quantity: "length",
  standard: "1 mm",
  within: ["0.1 mm", "20 mm"],
  about: "metal left between two holes or screws that cross inside a bar",
  basis: "common practice: a drill wanders about half a millimetre each way",
});

export const rule = defineRule({
  id: "bore.clash",
  title: "Holes and end screws miss each other inside the bar",
  group: "joints",
  level: "reject",
  basis: ["geometry"],
  needs: { boredHoles },
  criteria: { wall: holeWall },
  messages: {
    clash: {
      text: "inside {bar:bar}, {what:word} of {part:part} and {otherWhat:word} of {other:part} leave {metal:length} of metal between them",
      overlap:
        "inside {bar:bar}, {what:word} of {part:part} and {otherWhat:word} of {other:part} run {metal:length} into each other",
      advice: "set the two joints at different heights, or fasten one of them another way",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ boredHoles: holes }, { wall }, say) {
    for (const { bar, a, b, metal } of holes.pairs) {
      const at = ref("bar", bar);
      const measured = si(metal, "length");
      yield say.clash(
        at,
        { bar: at, what: holeWords(a.what), part: a.by, otherWhat: holeWords(b.what), other: b.by, metal: measured },
        { measured, limit: wall.at(at) },
      );
    }
  },
});
