import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import { jointFriction } from "../criteria/joint-friction.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { slipFactor } from "../criteria/slip-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { hanging } from "../facts/hanging.ts";
import { jointForces } from "../facts/joint-forces.ts";
import { dividedBy, loadFactors } from "../facts/load-factors.ts";
import { pivotForces } from "../facts/pivot-forces.ts";
import { type HangsNear, seatsInstead } from "../facts/seat-instead.ts";
import { seated } from "../facts/seated.ts";
import { secondOrder } from "../facts/second-order.ts";
import { slipFigures, slipUse, weightUse } from "../facts/slip-use.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef, type Ref, ref } from "../model/ref.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const slipUtilisation = defineCriterion({
  name: "slip-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "1",
  within: UTILISATION,
  about: "largest share of the trusted slip load that the worst screw of a joint may bear",
  basis: "common practice: screening formula of trysquare (docs/method/joints)",
});

export const rule = defineRule({
  id: "joint.slips",
  title: "Fasteners hold their joints by friction without slipping",
  group: "joints",
  level: "hold",
  basis: [
    "friction of tightened screws, 5 % value (docs/method/joints)",
    "elastic vector method for groups (Shigley, section 8-12)",
    "EN 1993-1-8:2005, 3.9.2: tension draws on the clamp",
  ],
  needs: { response: secondOrder, joints: jointForces, pivots: pivotForces, hanging, seated, by: loadFactors },
  criteria: { allowed: slipUtilisation, friction: jointFriction, factor: slipFactor, safety: safetyFactor },
  messages: {
    slips: {
      text: "its fasteners bear {use:ratio} times the load they are trusted to hold without slipping",
      advice: "put a bar or a stop under what they carry, add a fastener, or take a larger one",
      exact:
        "end {onto:bar} under {bar:bar}: solved anew so, {push:force} pass bar on bar and the screws are left with {kept:ratio} of what they are trusted to hold",
      measures: "ratio",
      working: {
        formula: "V / (F_slip (1 − 0.8 F_t/F_p)) of the worst screw",
        figures: "{shear:force} / ({trusted:force} × {left:ratio})",
      },
    },
  },
  *inspect(
    { response: found, joints, pivots, hanging: hung, seated: seats, by },
    { allowed, friction, factor, safety },
    say,
  ) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    const hangs = new Map(hung.map((one) => [one.joint.id, one]));
    const judged: (HangsNear & {
      readonly at: Ref<"joint">;
      readonly limit: Limit<"ratio">;
      readonly what?: "weight";
    })[] = [];
    for (const borne of [...joints, ...pivots]) {
      const at = borne.link.joint;
      const reckoned = {
        value: friction.at(at).value,
        factor: factor.at(at).value,
        divided: dividedBy(by, safety.at(at).value),
      };
      const all = slipUse(found.views, borne, reckoned);
      const weight = hangs.has(at.id) ? weightUse(found.views, borne, reckoned) : undefined;
      const byWeight = weight && all && weight.measured > all.measured;
      const governed = byWeight ? weight : all;
      if (!governed) continue;
      const limit = allowed.at(at);
      const one = { at, joint: at.id, borne, friction: reckoned, governed, limit, allowed: limit.value };
      judged.push(byWeight ? { ...one, what: "weight" } : one);
    }
    const instead = seatsInstead(
      seats,
      judged.filter(({ joint }) => hangs.get(joint)?.seatPossible),
    );
    for (const { at, borne, friction: reckoned, governed, limit, what } of judged) {
      const figures = slipFigures(found.views, borne, reckoned, governed, what);
      const { bar, onto } = hangs.get(at.id) ?? {};
      const seat = instead.get(at.id);
      // What more than the weight makes slip, a seat does not mend.
      const mended =
        seat && bar && onto && seat.kept <= limit.value
          ? { bar: ref("bar", bar), onto: ref("bar", onto), ...seat }
          : {};
      yield say.slips(at, { use: governed.measured, ...figures, ...mended }, { ...governed, limit });
    }
  },
});
