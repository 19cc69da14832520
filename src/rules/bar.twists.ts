import { defineCriterion } from "../criteria/criterion.ts";
import { bodies } from "../facts/bodies.ts";
import { response } from "../facts/response.ts";
import { governedTwist } from "../facts/twist.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const twist = defineCriterion({
  name: "twist",
  of: "bars",
  quantity: "angle",
  standard: "1°",
  within: ["0.05°", "10°"],
  about: "how far a bar may wind up along its length under its loads",
  basis: "common practice: what the eye sees along an edge",
});

export const rule = defineRule({
  id: "bar.twists",
  title: "Bars do not wind up under their loads",
  group: "bars",
  level: "hold",
  basis: ["Saint-Venant torsion of the real cross-section (docs/method/section.md)"],
  needs: { response, bodies },
  criteria: { allowed: twist },
  messages: {
    twists: {
      text: "twists {twist:angle} along its length",
      advice:
        "bring the load onto the axis of the bar, give the twist a second bar to go into, or take a profile with a closed slot",
      measures: "angle",
      working: { formula: "max φ(x) − min φ(x), φ' = T/(G J)" },
    },
  },
  *inspect({ response: found, bodies: bars }, { allowed }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const { bar } of bars.values()) {
      const governed = governedTwist(found.views, bar.ref.id);
      yield governed
        ? say.twists(bar.ref, { twist: governed.measured }, { ...governed, limit: allowed.at(bar.ref) })
        : notApplicable(bar.ref, "no length left");
    }
  },
});
