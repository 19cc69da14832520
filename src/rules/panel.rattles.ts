import { defineCriterion } from "../criteria/criterion.ts";
import { slotPanels } from "../facts/slot-panels.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const panelPlay = defineCriterion({
  name: "panel-play",
  of: "panels",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "5 mm"],
  about: "play across its thickness that a panel may have in a slot without a gasket",
  basis: "common practice",
});

export const rule = defineRule({
  id: "panel.rattles",
  title: "Panels do not rattle in their slots",
  group: "panels",
  level: "note",
  basis: ["common practice"],
  needs: { slotPanels },
  criteria: { play: panelPlay },
  messages: {
    loose: {
      text: "{sheet:word} has {play:length} of play in its slots, and no gasket",
      advice: "add a gasket made for the slot and the sheet",
      measures: "length",
    },
  },
  *inspect({ slotPanels: { all } }, { play: allowed }, say) {
    for (const { panel, edges } of all) {
      if (panel.held.kind !== "in-slot") continue;
      if (panel.held.gasket) {
        yield notApplicable(panel.ref, "a gasket holds it");
        continue;
      }
      if (edges.length === 0) continue;
      const widest = Math.max(...edges.map(({ slot }) => slot.opening));
      const play = si(widest - panel.sheet.thickness, "length");
      yield say.loose(panel.ref, { sheet: panel.sheet.name, play }, { measured: play, limit: allowed.at(panel.ref) });
    }
  },
});
