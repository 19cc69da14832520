import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import { jointFriction } from "../criteria/joint-friction.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { slipFactor } from "../criteria/slip-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { type HangingJoint, hanging } from "../facts/hanging.ts";
import { jointForces } from "../facts/joint-forces.ts";
import { dividedBy, loadFactors } from "../facts/load-factors.ts";
import { loaded } from "../facts/loaded.ts";
import { type HangsNear, type SeatInstead, seatsInstead } from "../facts/seat-instead.ts";
import { seated } from "../facts/seated.ts";
import { secondOrder } from "../facts/second-order.ts";
import { slipFigures, weightUse } from "../facts/slip-use.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef, ref } from "../model/ref.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const hungUtilisation = defineCriterion({
  name: "hung-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "0.6",
  within: UTILISATION,
  about: "share of their trusted slip load that fasteners may bear of a weight for good",
  basis: "common practice: a standing load on friction keeps a reserve",
});

const working = {
  formula: "V / (F_slip (1 − 0.8 F_t/F_p)) of the worst screw, under the weight alone",
  figures: "{shear:force} / ({trusted:force} × {left:ratio})",
} as const;

export const rule = defineRule({
  id: "joint.hung",
  title: "Weight sits bar on bar where it can",
  group: "joints",
  level: "hold",
  basis: ["common practice", "friction of tightened screws, 5 % value (docs/method/joints)"],
  needs: { hanging, loaded, response: secondOrder, joints: jointForces, seated, by: loadFactors },
  criteria: { allowed: hungUtilisation, friction: jointFriction, factor: slipFactor, safety: safetyFactor },
  messages: {
    hung: {
      text: "{bar:bar} hangs its load on the fasteners of {joint:joint}, {use:ratio} of what they are trusted to hold, though {onto:bar} could end under it and carry it",
      advice:
        "end {onto:bar} under {bar:bar}, so that the weight passes bar on bar and the screws only hold it in place",
      exact:
        "end {onto:bar} under {bar:bar}: solved anew so, {push:force} pass bar on bar and the screws are left with {kept:ratio} of what they are trusted to hold",
      measures: "ratio",
      working,
    },
    unseated: {
      text: "{bar:bar} hangs its load on the fasteners of {joint:joint}, {use:ratio} of what they are trusted to hold",
      advice: "add a fastener, or a stop under {bar:bar}",
      measures: "ratio",
      working,
      level: "note",
    },
  },
  *inspect(
    { hanging: hung, loaded: loads, response: found, joints, seated: seats, by },
    { allowed, friction, factor, safety },
    say,
  ) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    const forces = new Map(joints.map((joint) => [joint.link.joint.id, joint]));
    const judged: (HangsNear & { readonly at: HangingJoint; readonly limit: Limit<"ratio"> })[] = [];
    for (const at of hung) {
      const { joint } = at;
      const borne = forces.get(joint.id);
      if (at.rests) yield notApplicable(joint, "rests on a bar");
      else if (!loads.has(at.bar)) yield notApplicable(joint, "carries no declared load");
      else if (!borne) yield notApplicable(joint, "nothing fastens it");
      else {
        const reckoned = {
          value: friction.at(joint).value,
          factor: factor.at(joint).value,
          divided: dividedBy(by, safety.at(joint).value),
        };
        const governed = weightUse(found.views, borne, reckoned);
        if (!governed || governed.measured > 1) {
          yield notApplicable(joint, "slips: see joint.slips");
          continue;
        }
        const limit = allowed.at(joint);
        judged.push({ at, joint: joint.id, borne, friction: reckoned, governed, limit, allowed: limit.value });
      }
    }
    const instead = seatsInstead(
      seats,
      judged.filter(({ at }) => at.seatPossible),
    );
    for (const { at, borne, friction: reckoned, governed, limit } of judged) {
      const { joint, bar, onto, seatPossible } = at;
      const figures = slipFigures(found.views, borne, reckoned, governed, "weight");
      const values = { bar: ref("bar", bar), joint, use: governed.measured, ...figures };
      const measure = { ...governed, limit };
      const seat: SeatInstead | Record<never, never> = instead.get(joint.id) ?? {};
      if (seatPossible) yield say.hung(joint, { ...values, onto: ref("bar", onto), ...seat }, measure);
      else yield say.unseated(joint, values, measure);
    }
  },
});
