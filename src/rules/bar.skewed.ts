import { defineCriterion } from "../criteria/criterion.ts";
import { skews } from "../facts/skews.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const slotSkew = defineCriterion({
  name: "slot-skew",
  quantity: "angle",
  standard: "1°",
  within: ["0.05°", "10°"],
  about: "angle by which joined bars may be out of square, or turned against each other's slots",
  basis: "common practice: a bracket's legs follow no more",
});

export const rule = defineRule({
  id: "bar.skewed",
  title: "Slots of joined bars face each other",
  group: "drawing",
  level: "hold",
  basis: ["common practice"],
  needs: { skews },
  criteria: { allowed: slotSkew },
  messages: {
    leans: {
      text: "meets {onto:bar} {lean:angle} out of square; connectors of {joint:joint} are made for a right angle",
      advice: "straighten the bar, or use a joint made for the angle",
      measures: "angle",
    },
    twisted: {
      text: "stands turned by {twist:angle} against the slots of {onto:bar}",
      advice: 'correct its "roll" or "tall" so that the faces line up',
      measures: "angle",
    },
  },
  *inspect({ skews: all }, { allowed }, say) {
    for (const { joint, bar, onto, lean, twist } of all) {
      const at = ref("bar", bar);
      const limit = allowed.at(at);
      yield say.leans(
        at,
        { onto: ref("bar", onto), lean: si(lean, "angle"), joint },
        { measured: si(lean, "angle"), limit },
      );
      yield say.twisted(
        at,
        { twist: si(twist, "angle"), onto: ref("bar", onto) },
        { measured: si(twist, "angle"), limit },
      );
    }
  },
});
