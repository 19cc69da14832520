import { defineCriterion } from "../criteria/criterion.ts";
import { placements } from "../facts/placements.ts";
import { tiedGaps } from "../facts/tied-gaps.ts";
import { endRef, ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const jointGap = defineCriterion({
  name: "joint-gap",
  of: "bars",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "5 mm"],
  about: "gap between a cut end and the face it is fastened to, or between two bars that a tie holds",
  basis: "common practice: tolerance of an ordinary saw cut",
});

export const rule = defineRule({
  id: "joint.gap",
  title: "Fastened ends and tied bars touch what they are fastened to",
  group: "joints",
  level: "hold",
  basis: ["common practice"],
  needs: { placements, tiedGaps },
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
    tied: {
      text: "{bar:bar} stands {gap:length} off {other:bar}: the tie clamps nothing until they touch",
      advice: "draw the two bars face to face",
      measures: "length",
    },
    untied: {
      text: "{bar:bar} and {other:bar} do not lie face to face: the tie finds no two faces to hold together",
      advice: "draw the two bars face to face, or join them otherwise",
      level: "reject",
    },
  },
  *inspect({ placements: placed, tiedGaps: tied }, { allowed }, say) {
    for (const { joint, contact } of placed.met) {
      const gap = si(Math.max(0, contact.widestGap), "length");
      yield say.gap(
        joint.ref,
        { end: endRef(joint.bar, joint.end), gap, onto: ref("bar", contact.b.bar) },
        { measured: gap, limit: allowed.at(ref("bar", joint.bar)) },
      );
    }
    for (const joint of placed.unmet) yield say.nothing(joint.ref, { end: endRef(joint.bar, joint.end) }, false);
    for (const { tie, gap } of tied) {
      const [bar, other] = [ref("bar", tie.bars[0]), ref("bar", tie.bars[1])];
      yield say.untied(tie.ref, { bar, other }, gap !== undefined);
      if (gap === undefined) continue;
      const measured = si(Math.max(0, gap), "length");
      yield say.tied(tie.ref, { bar, gap: measured, other }, { measured, limit: allowed.at(bar) });
    }
  },
});
