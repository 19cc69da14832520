import { defineCriterion } from "../criteria/criterion.ts";
import { slotUse } from "../facts/slot-use.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const nutSpacing = defineCriterion({
  name: "nut-spacing",
  quantity: "length",
  standard: "0 mm",
  about: "free length of slot between two nuts, or a nut and an end fastener",
  basis: "geometry",
});

export const rule = defineRule({
  id: "nut.clash",
  title: "Nuts in one slot have room beside each other",
  group: "access and build",
  level: "reject",
  basis: ["geometry"],
  needs: { slotUse },
  criteria: { spacing: nutSpacing },
  messages: {
    clash: {
      text: "in slot {slot:word} of {bar:bar} the {what:word} of {part:part} and the {otherWhat:word} of {other:part} are {free:length} apart",
      advice: "move one of the connectors along the bar, or onto another face",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ slotUse: use }, { spacing }, say) {
    for (const { bar, face, slot, a, b, free } of use.neighbours) {
      const at = ref("bar", bar);
      const measured = si(free, "length");
      yield say.clash(
        at,
        { slot: `${face}${slot}`, bar: at, what: a.what, part: a.by, otherWhat: b.what, other: b.by, free: measured },
        { measured, limit: spacing.at(at) },
      );
    }
  },
});
