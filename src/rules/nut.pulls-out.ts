import { defineCriterion } from "../criteria/criterion.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { UTILISATION } from "../criteria/utilisation-range.ts";
import { bodies } from "../facts/bodies.ts";
import { governingOf, governingView } from "../facts/governing.ts";
import { type ClampForce, jointForces } from "../facts/joint-forces.ts";
import { dividedBy, dividedWords, loadFactors } from "../facts/load-factors.ts";
import { leverage, lipsOver, nutPull } from "../facts/nut-pull.ts";
import type { View } from "../facts/response.ts";
import { secondOrder } from "../facts/second-order.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const lipUtilisation = defineCriterion({
  name: "lip-utilisation",
  of: "bars",
  quantity: "ratio",
  standard: "1",
  within: UTILISATION,
  about: "largest share of the lips' rating with which loads may pull a nut against them",
  basis: "common practice: the rating of stock has its partial factor in it",
});

export const rule = defineRule({
  id: "nut.pulls-out",
  title: "Slot lips hold the nuts that loads pull on",
  group: "joints",
  level: "reject",
  basis: [
    "yield of the slot lips as rated in stock (docs/method/joints)",
    "leverage of bracket legs (Shigley, section 8-12)",
  ],
  needs: { response: secondOrder, joints: jointForces, bodies, by: loadFactors },
  criteria: { allowed: lipUtilisation, safety: safetyFactor },
  messages: {
    pulled: {
      text: "a nut is pulled against the slot lips of {bar:bar} with {pull:force}",
      advice: "turn the bracket so that it is pushed on, add a fastener, or take a profile with heavier lips",
      measures: "force",
      working: {
        formula: "F_t (a + b)/b + F_bent: leverage of the leg on the straight pull, and the joint bent open",
        figures: "{straight:force} × {leverage:ratio} + {bent:force}",
      },
    },
  },
  *inspect({ response: found, joints, bodies: bars, by }, { allowed, safety }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const joint of joints) {
      for (const clamp of joint.clamps) {
        const { into } = clamp.placed;
        if (into.kind !== "nut") continue;
        const worst = (view: View): ClampForce | undefined =>
          joint
            .borne(view)
            .clamps.filter((force) => force.clamp === clamp)
            .sort((a, b) => nutPull(b) - nutPull(a))[0];
        const bar = ref("bar", clamp.bar);
        const most = governingOf(found.views, dividedBy(by, safety.at(bar).value), "force", (view) => {
          const force = worst(view);
          return force ? nutPull(force) : 0;
        });
        const profile = bars.get(clamp.bar)?.bar.profile;
        if (!most || !profile) continue;
        const { governed, divided } = most;
        const share = allowed.at(bar);
        const limit = {
          value: si((profile.lipRating * lipsOver(clamp) * share.value) / divided, "force"),
          from: share.from,
          basis: `lip rating of ${profile.name}: ${profile.lipSource}${dividedWords(divided)}`,
        };
        const view = governingView(found.views, governed);
        const force = view && worst(view);
        const values = {
          bar,
          pull: governed.measured,
          straight: si(force?.pull ?? 0, "force"),
          leverage: si(leverage(clamp), "ratio"),
          bent: si(force?.bent ?? 0, "force"),
        };
        yield say.pulled(into.ref, values, { ...governed, limit });
      }
    }
  },
});
