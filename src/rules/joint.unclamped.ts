import { defineCriterion } from "../criteria/criterion.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { governingOf } from "../facts/governing.ts";
import { jointForces } from "../facts/joint-forces.ts";
import { dividedBy, dividedWords, loadFactors } from "../facts/load-factors.ts";
import { secondOrder } from "../facts/second-order.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const clampUtilisation = defineCriterion({
  name: "clamp-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "0.9",
  within: UTILISATION,
  about: "largest share of its usual preload with which a screw may be pulled off the face it clamps",
  basis:
    "95 of 100 screws tightened by torque keep 0.76 of the usual preload, and 0.8 of a pull comes off the clamp (EN 1993-1-8:2005, 3.9.2)",
});

export const rule = defineRule({
  id: "joint.unclamped",
  title: "No load takes the clamp off a joint",
  group: "joints",
  level: "hold",
  basis: [
    "EN 1993-1-8:2005, 3.9.2 and 3.11: preloaded fasteners in tension",
    "rigid bar end tilting about its pressed edge (Bhandari, section 7.7)",
  ],
  needs: { response: secondOrder, joints: jointForces, by: loadFactors },
  criteria: { allowed: clampUtilisation, safety: safetyFactor },
  messages: {
    open: {
      text: "opens: a screw is pulled with {use:ratio} times the force it clamps with",
      advice: "add a fastener on the side that opens, or put a bar under the load",
      measures: "ratio",
    },
  },
  *inspect({ response: found, joints, by }, { allowed, safety }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const joint of joints) {
      const at = joint.link.joint;
      const most = governingOf(found.views, dividedBy(by, safety.at(at).value), "ratio", (view) => {
        let share = 0;
        for (const { clamp, pull, bent } of joint.borne(view).clamps) {
          const tension = pull + bent;
          if (tension > 0) share = Math.max(share, clamp.preload > 0 ? tension / clamp.preload : Number.MAX_VALUE);
        }
        return share;
      });
      if (!most) continue;
      const { governed, divided } = most;
      const share = allowed.at(at);
      const limit = {
        ...share,
        value: si(share.value / divided, "ratio"),
        basis: `${share.basis}${dividedWords(divided)}`,
      };
      yield say.open(at, { use: governed.measured }, { ...governed, limit });
    }
  },
});
