import { defineCriterion } from "../criteria/criterion.ts";
import { jointFriction } from "../criteria/joint-friction.ts";
import { slipFactor } from "../criteria/slip-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { jointForces } from "../facts/joint-forces.ts";
import { response } from "../facts/response.ts";
import { reversedViews, reversing } from "../facts/reversing.ts";
import { slipUse } from "../facts/slip-use.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const looseningUtilisation = defineCriterion({
  name: "loosening-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "0.5",
  within: UTILISATION,
  about: "largest share of the trusted slip load that may come and go in a joint without a lock",
  basis: "common practice: screws work loose where the joint slips to and fro",
});

export const rule = defineRule({
  id: "joint.loosens",
  title: "Joints that are shaken are locked or far from slipping",
  group: "joints",
  level: "hold",
  basis: ["common practice", "friction of tightened screws, 5 % value (docs/method/joints)"],
  needs: { response, joints: jointForces, reversing },
  criteria: { allowed: looseningUtilisation, friction: jointFriction, factor: slipFactor },
  messages: {
    loosens: {
      text: "shaken by {why:word}, its unlocked screws may work loose: {use:ratio} of their slip load comes and goes",
      advice: "lock the screws, or add a fastener",
      measures: "ratio",
    },
  },
  *inspect({ response: found, joints, reversing: shakes }, { allowed, friction, factor }, say) {
    if (!shakes) {
      yield notApplicable(frameRef, "nothing declared shakes it");
      return;
    }
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    const views = reversedViews(found.views, shakes.share);
    for (const joint of joints) {
      const at = joint.link.joint;
      if (joint.link.connectors.every(({ choice }) => choice !== undefined && choice.lock !== "none")) {
        yield notApplicable(at, "its screws are locked");
        continue;
      }
      const governed = slipUse(views, joint, {
        value: friction.at(at).value,
        factor: factor.at(at).value,
        divided: 1,
      });
      if (governed)
        yield say.loosens(at, { why: shakes.why, use: governed.measured }, { ...governed, limit: allowed.at(at) });
    }
  },
});
