import { defineCriterion } from "../criteria/criterion.ts";
import { placements } from "../facts/placements.ts";
import { endRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const jointGap = defineCriterion({
  name: "joint-gap",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "5 mm"],
  about: "gap between a cut end and the face it is fastened to",
  basis: "common practice: tolerance of an ordinary saw cut",
});

export const rule = defineRule({
  id: "joint.gap",
  title: "Fastened ends touch the bar they are fastened to",
  group: "joints",
  level: "hold",
  basis: ["common practice"],
  needs: { placements },
  criteria: { allowed: jointGap },
  messages: {
    gap: {
      text: "{end:end} stands {gap:length} off {onto:bar}",
      advice: "draw the end to the other bar's centreline and let it be cut butt, or correct its point",
      measures: "length",
    },
    nothing: {
      text: "{end:end} is fastened but meets no bar within reach of a connector",
      advice: "draw the end up to the bar it should be fastened to",
      level: "reject",
    },
  },
  *inspect({ placements: placed }, { allowed }, say) {
    for (const { joint, contact } of placed.met) {
      const gap = si(Math.max(0, contact.widestGap), "length");
      yield say.gap(
        joint.ref,
        { end: endRef(joint.bar, joint.end), gap, onto: ref("bar", contact.b.bar) },
        { measured: gap, limit: allowed.at(ref("bar", joint.bar)) },
      );
    }
    for (const joint of placed.unmet) yield say.nothing(joint.ref, { end: endRef(joint.bar, joint.end) }, false);
  },
});
