import { defineCriterion } from "../criteria/criterion.ts";
import { jointFriction } from "../criteria/joint-friction.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { slipFactor } from "../criteria/slip-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { governing, governingView } from "../facts/governing.ts";
import { dividedBy, loadFactors } from "../facts/load-factors.ts";
import { secondOrder } from "../facts/second-order.ts";
import { tieShear } from "../facts/tie-shear.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const tieUtilisation = defineCriterion({
  name: "tie-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "1",
  within: UTILISATION,
  about: "largest share of its trusted slip load that a tie between two bars may bear",
  basis: "common practice",
});

export const rule = defineRule({
  id: "tie.slips",
  title: "Ties keep bars side by side from sliding on each other",
  group: "joints",
  level: "hold",
  basis: [
    "shear flow V S / I of two bars that bend as one (Gere and Goodno, section 5.11)",
    "friction of tightened screws, 5 % value (docs/method/joints)",
  ],
  needs: { response: secondOrder, pairs: tieShear, by: loadFactors },
  criteria: { allowed: tieUtilisation, friction: jointFriction, factor: slipFactor, safety: safetyFactor },
  messages: {
    slips: {
      text: "the two bars slide on each other: {shear:force} at each tie",
      advice: "tie the bars at shorter distances, or take one taller bar",
      measures: "force",
      working: {
        formula: "∫V dx / (I/S) over the stretch of the tie, I and S of the two as one",
        figures: "{change:moment} / {lever:length}",
      },
    },
  },
  *inspect({ response: found, pairs, by }, { allowed, friction, factor, safety }, say) {
    if (found.kind !== "solved") {
      if (pairs.length > 0) yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const pair of pairs) {
      const governed = governing(found.views, ["strength"], "force", (view) => pair.change(view) / pair.lever);
      const view = governed && governingView(found.views, governed);
      if (!view) continue;
      const divided = factor.at(pair.tie).value * dividedBy(by, safety.at(pair.tie).value);
      const slip = (pair.testedSlip ?? pair.unitSlip * friction.at(pair.tie).value) / divided;
      const share = allowed.at(pair.tie);
      const limit = { value: si(slip * share.value, "force"), from: share.from, basis: "trusted slip load of one tie" };
      yield say.slips(
        pair.tie,
        {
          shear: governed.measured,
          change: si(pair.change(view), "moment"),
          lever: si(pair.lever, "length"),
        },
        { ...governed, limit },
      );
    }
  },
});
