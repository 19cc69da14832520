import { defineCriterion } from "../criteria/criterion.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { torqueLimit } from "../facts/torque-limit.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const torqueUtilisation = defineCriterion({
  name: "torque-utilisation",
  quantity: "ratio",
  standard: "1",
  within: UTILISATION,
  about: "largest share a screw may be tightened to of the torque at which something gives",
  basis: "common practice",
});

export const rule = defineRule({
  id: "screw.overtight",
  title: "Screws are not tightened beyond what they and the slot bear",
  group: "joints",
  level: "hold",
  basis: [
    "T = K F d (Shigley, Eq. 8-27)",
    "ISO 898-1: proof load",
    "ISO 2936: proof torque of hex keys",
    "docs/method/joints: slot lips and core threads",
  ],
  needs: { screws: torqueLimit },
  criteria: { allowed: torqueUtilisation },
  messages: {
    over: {
      text: "a screw is tightened to {torque:moment}, more than {what:word} may bear",
      advice: "tighten it to its rated torque, or take more or larger screws",
      measures: "moment",
    },
  },
  *inspect({ screws }, { allowed }, say) {
    for (const { clamp, first } of screws) {
      const at = clamp.placed.ref;
      const torque = si(clamp.connector.choice?.torque ?? 0, "moment");
      const share = allowed.at(at);
      const limit = { value: si(first.torque * share.value, "moment"), from: share.from, basis: first.basis };
      yield say.over(at, { torque, what: first.what }, { measured: torque, limit });
    }
  },
});
