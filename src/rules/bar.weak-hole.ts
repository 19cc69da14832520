import { memberFactor } from "../criteria/member-factor.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { bodies } from "../facts/bodies.ts";
import { governingView, worstOfAll } from "../facts/governing.ts";
import { holeWords } from "../facts/hole-words.ts";
import { dividedBy, dividedWords, loadFactors } from "../facts/load-factors.ts";
import { materials } from "../facts/materials.ts";
import { netSections } from "../facts/net-sections.ts";
import { netStress } from "../facts/net-stress.ts";
import { secondOrder } from "../facts/second-order.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "bar.weak-hole",
  title: "Holes do not weaken bars where they work hard",
  group: "bars",
  level: "reject",
  basis: ["EN 1999-1-1:2007, 6.2.5.1: stress on the net section", "EN 1990:2002, 6.4: strength combinations"],
  needs: { response: secondOrder, netSections, bodies, materials, by: loadFactors },
  criteria: { factor: memberFactor, safety: safetyFactor },
  messages: {
    severed: {
      text: "{what:word} of {by:part} takes all of its section: it is cut in two there",
      advice: "drill a smaller hole, or take a larger profile",
    },
    weak: {
      text: "where {what:word} of {by:part} weakens it, it is stressed to {stress:stress}",
      advice: "move the hole to where the bar bends less, near a support, or fasten without it",
      measures: "stress",
      working: {
        formula: "N/A_net + M_y/W_y,net + M_z/W_z,net",
        figures: "{n:force} / {area:area} + {my:moment} / {wy:sectionModulus} + {mz:moment} / {wz:sectionModulus}",
      },
    },
  },
  *inspect({ response: found, netSections: sections, bodies: bars, materials: known, by }, { factor, safety }, say) {
    if (sections.length === 0) return;
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const net of sections) {
      const body = bars.get(net.bar);
      if (net.A === 0) {
        yield say.severed(ref("bar", net.bar), { what: holeWords(net.what), by: net.by }, false);
        continue;
      }
      const material = body && known.get(body.bar.profile.material);
      const governed = worstOfAll(found.views, ["strength"], "stress", (view) => netStress(view, net)?.stress);
      const view = governed && governingView(found.views, governed);
      const worst = view && netStress(view, net);
      if (!body || !material || !governed || !worst) continue;
      const at = ref("bar", net.bar);
      const given = factor.at(at);
      const divided = dividedBy(by, safety.at(at).value);
      const limit = {
        value: si(material.proof / (given.value * divided), "stress"),
        from: given.from,
        basis: `proof strength of ${material.name} divided by ${given.value} (${given.basis})${dividedWords(divided)}`,
      };
      const values = {
        what: holeWords(net.what),
        by: net.by,
        stress: governed.measured,
        n: si(worst.N, "force"),
        area: si(net.A, "area"),
        my: si(worst.My, "moment"),
        wy: si(net.Iy / net.zMost, "sectionModulus"),
        mz: si(worst.Mz, "moment"),
        wz: si(net.Iz / net.yMost, "sectionModulus"),
      };
      yield say.weak(at, values, { ...governed, limit });
    }
  },
});
