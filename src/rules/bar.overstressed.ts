import { memberFactor } from "../criteria/member-factor.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { largestStress } from "../facts/bar-stress.ts";
import { bodies } from "../facts/bodies.ts";
import { governingView, worstOfAll } from "../facts/governing.ts";
import { dividedBy, dividedWords, loadFactors } from "../facts/load-factors.ts";
import { materials } from "../facts/materials.ts";
import { secondOrder } from "../facts/second-order.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "bar.overstressed",
  title: "Stress in the bars stays under their proof strength",
  group: "bars",
  level: "reject",
  basis: ["EN 1999-1-1:2007, 6.2.1: von Mises stress, elastic", "EN 1990:2002, 6.4: strength combinations"],
  needs: { response: secondOrder, bodies, materials, by: loadFactors },
  criteria: { factor: memberFactor, safety: safetyFactor },
  messages: {
    over: {
      text: "is stressed to {stress:stress}",
      advice: "take a stiffer profile, shorten its span, or lighten its load",
      measures: "stress",
      working: {
        formula: "√(σ² + 3 τ²), σ = N/A + M_y z/I_y − M_z y/I_z, τ = T/W_t + V/A_v",
        figures: "√({normal:stress}² + 3 × {shear:stress}²)",
      },
    },
  },
  *inspect({ response: found, bodies: bars, materials: known, by }, { factor, safety }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const { bar } of bars.values()) {
      const material = known.get(bar.profile.material);
      const governed = worstOfAll(found.views, ["strength"], "stress", (view) => {
        const forces = view.forces(bar.ref.id);
        return forces && largestStress(forces, bar.profile).equivalent;
      });
      if (!governed || !material) {
        yield notApplicable(bar.ref, "no length left");
        continue;
      }
      const given = factor.at(bar.ref);
      const divided = dividedBy(by, safety.at(bar.ref).value);
      const limit = {
        value: si(material.proof / (given.value * divided), "stress"),
        from: given.from,
        basis: `proof strength of ${material.name} divided by ${given.value} (${given.basis})${dividedWords(divided)}`,
      };
      const forces = governingView(found.views, governed)?.forces(bar.ref.id);
      const { normal, shear } = forces ? largestStress(forces, bar.profile) : { normal: 0, shear: 0 };
      yield say.over(
        bar.ref,
        { stress: governed.measured, normal: si(normal, "stress"), shear: si(shear, "stress") },
        { ...governed, limit },
      );
    }
  },
});
