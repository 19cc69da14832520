import { defineCriterion } from "../criteria/criterion.ts";
import { panelBending } from "../facts/panel-bending.ts";
import { PUSH_PATCH } from "../facts/push-patch.ts";
import { slotPanels } from "../facts/slot-panels.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const panelPush = defineCriterion({
  name: "panel-push",
  of: "panels",
  quantity: "force",
  standard: "250 N",
  within: ["1 N", "5 kN"],
  about: "how hard a hand pushes a panel in slots or on faces",
  basis: "common practice: a person leaning",
});

const panelGive = defineCriterion({
  name: "panel-give",
  of: "panels",
  quantity: "length",
  standard: "span / 40, at least 15 mm",
  within: ["0.5 mm", "200 mm"],
  about: "how far a panel may give under that push; the span is the shortest way between edges that hold it",
  basis: "common practice: clear panels below 5 mm flap in spans over 600 mm",
});

const panelSag = defineCriterion({
  name: "panel-sag",
  of: "panels",
  quantity: "length",
  standard: "span / 100, at least 1 mm",
  within: ["0.1 mm", "100 mm"],
  about: "how far a panel may sag between what holds it under its loads; an overhang counts with twice its length",
  basis: "common practice",
});

const panelStrength = defineCriterion({
  name: "panel-strength",
  of: "panels",
  quantity: "ratio",
  standard: "0.5",
  within: ["0.05", "1"],
  about: "share of a sheet's strength that its loads, or a push, may take",
  basis: "common practice",
});

/** How a panel is reckoned with. */
const PLATE =
  "D ∇⁴w = p, D = E t³ / 12 (1 − ν²), supported along the edges that hold it; less what stretching takes off";

const OVERHANG =
  "(q a⁴/8 + a · q a²/2 · min(L/3, 0.186 b)) / D: overhang a, next bar L behind, bars at the sides b apart";

export const rule = defineRule({
  id: "panel.flexes",
  title: "Panels are stiff and strong enough for a push and their loads",
  group: "panels",
  level: "hold",
  basis: ["theory of thin plates", "common practice"],
  needs: { panelBending, slotPanels },
  criteria: { push: panelPush, give: panelGive, sag: panelSag, strength: panelStrength },
  messages: {
    gives: {
      text: "a push of {force:force} on {patch:length} square bends it in by {give:length}",
      advice: "take a thicker or stiffer sheet, or divide it by another bar",
      measures: "length",
      working: { formula: PLATE },
    },
    cracks: {
      text: "a push of {force:force} on {patch:length} square stresses {sheet:word} to {stress:stress}",
      advice: "take a thicker or stronger sheet, or divide it by another bar",
      measures: "stress",
      working: { formula: "6 m/t² of the same plate" },
    },
    sags: {
      text: "{sheet:word} sags {sag:length} between what holds it under its loads",
      advice: "take a thicker or stiffer sheet, or put another bar under it",
      measures: "length",
      working: { formula: PLATE },
    },
    droops: {
      text: "{sheet:word} gives {sag:length} at its edge, {reach:length} past what holds it, under its loads",
      advice: "let it reach out less far, take a thicker or stiffer sheet, or put a bar under the overhang",
      measures: "length",
      working: { formula: OVERHANG },
    },
    snaps: {
      text: "its loads stress {sheet:word} to {stress:stress} where it hangs over by {reach:length}",
      advice: "let it reach out less far, take a thicker or stronger sheet, or put a bar under the overhang",
      measures: "stress",
      working: { formula: "6 m/t², m = q a²/2 a length" },
    },
    breaks: {
      text: "its loads stress {sheet:word} to {stress:stress}",
      advice: "take a thicker or stronger sheet, or put another bar under it",
      measures: "stress",
      working: { formula: "6 m/t² of the same plate" },
    },
  },
  *inspect({ panelBending: all, slotPanels: { all: slotted } }, { push, give, sag, strength }, say) {
    for (const { panel, rectangle } of slotted)
      if (!rectangle)
        yield notApplicable(panel.ref, "the bars round it make no rectangle: how it bends is not worked out");
    const patch = si(PUSH_PATCH, "length");
    for (const { panel, across, loaded, hanging, push: pushed } of all) {
      const at = panel.ref;
      const { sheet, held } = panel;
      const share = strength.at(at);
      const may = { ...share, value: si(share.value * sheet.strength, "stress") };
      if (held.kind === "laid" && !loaded) yield notApplicable(at, "nothing is declared to lie on it");
      if (held.kind !== "laid") {
        const force = push.at(at).value;
        const peak = pushed(force);
        const [bent, stress] = [si(peak.deflection, "length"), si(peak.stress, "stress")];
        yield say.gives(at, { force, patch, give: bent }, { measured: bent, limit: give.at(at, across) });
        yield say.cracks(at, { force, patch, sheet: sheet.name, stress }, { measured: stress, limit: may });
      }
      for (const { over, peak } of hanging) {
        const [sagged, stress] = [si(peak.deflection, "length"), si(peak.stress, "stress")];
        const [reach, sheetName] = [si(over.length, "length"), sheet.name];
        // As for bars: the tip of an overhang counts as the middle of a span of twice its length.
        const limit = sag.at(at, 2 * over.length);
        yield say.droops(at, { sheet: sheetName, sag: sagged, reach }, { measured: sagged, limit });
        yield say.snaps(at, { sheet: sheetName, stress, reach }, { measured: stress, limit: may });
      }
      if (loaded) {
        const [sagged, stress] = [si(loaded.deflection, "length"), si(loaded.stress, "stress")];
        yield say.sags(at, { sheet: sheet.name, sag: sagged }, { measured: sagged, limit: sag.at(at, across) });
        yield say.breaks(at, { sheet: sheet.name, stress }, { measured: stress, limit: may });
      }
    }
  },
});
