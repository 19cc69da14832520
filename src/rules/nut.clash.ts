import { defineCriterion } from "../criteria/criterion.ts";
import { faceNormal } from "../facts/axes.ts";
import { facingWords } from "../facts/axis-words.ts";
import { bodies } from "../facts/bodies.ts";
import { slotUse } from "../facts/slot-use.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const nutSpacing = defineCriterion({
  name: "nut-spacing",
  of: "bars",
  quantity: "length",
  standard: "0 mm",
  within: ["0 mm", "50 mm"],
  about: "free length of slot between two nuts, or a nut and an end fastener",
  basis: "geometry: two parts cannot fill one stretch of slot",
});

export const rule = defineRule({
  id: "nut.clash",
  title: "Nuts in one slot have room beside each other",
  group: "access and build",
  level: "reject",
  basis: ["geometry"],
  needs: { slotUse, bodies },
  criteria: { spacing: nutSpacing },
  messages: {
    clash: {
      text: "in slot {slot:word} of {bar:bar}, {what:word} {part:part} and {otherWhat:word} {other:part} are {free:length} apart",
      overlap:
        "in slot {slot:word} of {bar:bar}, {what:word} {part:part} and {otherWhat:word} {other:part} overlap by {free:length}",
      advice: "move one of the connectors along the bar, or onto another face",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ slotUse: use, bodies: all }, { spacing }, say) {
    for (const { bar, face, slot, a, b, free } of use.neighbours) {
      const at = ref("bar", bar);
      const measured = si(free, "length");
      const body = all.get(bar);
      const name = `${face}${slot}`;
      const shown = body ? facingWords(name, faceNormal(body.axes, face)) : name;
      yield say.clash(
        at,
        { slot: shown, bar: at, what: a.what, part: a.by, otherWhat: b.what, other: b.by, free: measured },
        { measured, limit: spacing.at(at) },
      );
    }
  },
});
