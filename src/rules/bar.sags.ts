import { defineCriterion } from "../criteria/criterion.ts";
import { bodies } from "../facts/bodies.ts";
import { response } from "../facts/response.ts";
import { governedSag, sags } from "../facts/sag.ts";
import { spans } from "../facts/spans.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const sag = defineCriterion({
  name: "sag",
  of: "bars",
  quantity: "length",
  standard: "span / 300, at least 1 mm",
  within: ["0.1 mm", "100 mm"],
  about: "how far a bar may bend between the points that hold it; an overhang counts with twice its length",
  basis: "common practice for benches and shelves; the least of it is about how straight bars come",
});

export const rule = defineRule({
  id: "bar.sags",
  title: "Bars do not sag more than they may",
  group: "bars",
  level: "hold",
  basis: ["linear elastic frame analysis with shear deformation (docs/method)", "EN 1990:2002, 6.5: serviceability"],
  needs: { response, spans, bodies, sags },
  criteria: { allowed: sag },
  messages: {
    sags: {
      text: "sags {sag:length} over its span of {span:length}",
      advice: "take a stiffer profile, stand a flat one upright, or shorten the span with another post",
      measures: "length",
      working: { formula: "greatest distance of the bent axis w(x) from the line through the ends of its span" },
    },
    hangs: {
      text: "its end, {span:length} past what holds it, moves by {sag:length}",
      advice: "take a stiffer profile, shorten the end, or hold it",
      measures: "length",
      working: { formula: "w(tip) − w(held), w with what the bar turns where it is held; upward what bends it alone" },
    },
  },
  *inspect({ response: found, spans: all, bodies: bars, sags: bent }, { allowed }, say) {
    const why = whyNotSolved(found);
    if (found.kind !== "solved") {
      yield undecided(frameRef, why);
      return;
    }
    for (const { bar } of bars.values()) {
      let worst: { share: number; judgement: ReturnType<typeof say.sags | typeof say.hangs> } | undefined;
      for (const span of all.get(bar.ref.id) ?? []) {
        const governed = governedSag(bent, found.views, bar.ref.id, span);
        if (!governed) continue;
        const limit = allowed.at(bar.ref, span.kind === "overhang" ? 2 * span.length : span.length);
        const share = governed.measured / Math.max(limit.value, 1e-12);
        if (worst && share <= worst.share) continue;
        const values = { sag: governed.measured, span: si(span.length, "length") };
        const tell = span.kind === "overhang" ? say.hangs : say.sags;
        worst = { share, judgement: tell(bar.ref, values, { ...governed, limit }) };
      }
      const held = (all.get(bar.ref.id) ?? []).length > 0;
      yield worst?.judgement ??
        notApplicable(bar.ref, held ? "it lifts off its feet under its loads; frame.tips says so" : "nothing holds it");
    }
  },
});
