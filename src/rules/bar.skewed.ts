import { defineCriterion } from "../criteria/criterion.ts";
import { skews } from "../facts/skews.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const slotSkew = defineCriterion({
  name: "slot-skew",
  of: "bars",
  quantity: "angle",
  standard: "1°",
  within: ["0.05°", "10°"],
  about: "angle by which joined bars may be out of square, or turned against each other's slots",
  basis: "common practice: a bracket's legs follow no more",
});

const slotBent = defineCriterion({
  name: "slot-bent",
  of: "bars",
  quantity: "angle",
  standard: "5°",
  within: ["1°", "15°"],
  about: "angle out of square from which no bracket made for a right angle goes on at all",
  basis: "common practice: over a leg of 40 mm it gapes by 3.5 mm",
});

export const rule = defineRule({
  id: "bar.skewed",
  title: "Slots of joined bars face each other",
  group: "drawing",
  level: "hold",
  basis: ["common practice"],
  needs: { skews },
  criteria: { allowed: slotSkew, most: slotBent },
  messages: {
    leans: {
      text: "meets {onto:bar} {lean:angle} out of square; connectors of {joint:joint} are made for a right angle",
      advice: "straighten the bar, or use a joint made for the angle",
      measures: "angle",
    },
    bent: {
      text: "meets {onto:bar} {lean:angle} out of square: connectors of {joint:joint}, made for a right angle, cannot lie on both",
      advice: "use a joint made for the angle, such as a pivot, or straighten the bar",
      measures: "angle",
      level: "reject",
    },
    twisted: {
      text: "stands turned by {twist:angle} against the slots of {onto:bar}",
      advice: 'correct its "roll" or "tall" so that the faces line up',
      measures: "angle",
    },
  },
  *inspect({ skews: all }, { allowed, most }, say) {
    for (const { joint, bar, onto, lean, twist } of all) {
      const at = ref("bar", bar);
      const limit = allowed.at(at);
      const [measured, values] = [si(lean, "angle"), { onto: ref("bar", onto), lean: si(lean, "angle"), joint }];
      yield say.bent(at, values, { measured, limit: most.at(at) });
      // One angle is told once.
      if (lean <= most.at(at).value) yield say.leans(at, values, { measured, limit });
      yield say.twisted(
        at,
        { twist: si(twist, "angle"), onto: ref("bar", onto) },
        { measured: si(twist, "angle"), limit },
      );
    }
  },
});
