import { defineCriterion } from "../criteria/criterion.ts";
import { panelNotches } from "../facts/panel-notches.ts";
import { sheetFittings } from "../facts/sheet-fittings.ts";
import { slotPanels } from "../facts/slot-panels.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const notchRoom = defineCriterion({
  name: "notch-room",
  of: "panels",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "20 mm"],
  about: "room between a notch of a panel and what it is cut for, the panel pushed up to it",
  basis: "common practice",
});

/** Room nearer to each other than this is the same, m. */
const ALIKE = 1e-9;

export const rule = defineRule({
  id: "panel.uncut",
  title: "Panels are notched where bars and fasteners stand in their corners",
  group: "panels",
  level: "hold",
  basis: ["geometry", "common practice"],
  needs: { panelNotches, sheetFittings, slotPanels },
  criteria: { asked: notchRoom },
  messages: {
    corner: {
      text: "{fittings:parts} have {room:length} of room in a corner; notches of {along:length} by {across:length} clear all corners",
      overlap:
        "{fittings:parts} stand {room:length} in a corner of the sheet; notches of {along:length} by {across:length} clear all corners",
      advice: 'write "notches" of that size, and cut them with a radius, with eye protection on',
      measures: "length",
      sense: "at least",
    },
    edge: {
      text: "{fittings:parts} stand up to {depth:length} in its edge, away from the corners",
      advice: "move them to a face where no panel runs, or hold the bar in another way",
    },
    crossed: {
      text: "{bar:part} crosses it and stands {depth:length} in the sheet",
      advice: "name this bar as an edge and divide the panel, or move the bar out of its plane",
      level: "reject",
    },
    lies: {
      text: "{fittings:parts} stand up to {depth:length} in it where it should lie on its bars",
      advice:
        'put them on faces where no sheet lies, or let the sheet end in front of them: an "overhang" below zero, or "notches" where they stand in its corners',
    },
  },
  *inspect({ panelNotches: all, sheetFittings: laid, slotPanels: { all: slotted } }, { asked }, say) {
    for (const { panel, rectangle } of slotted)
      if (!rectangle)
        yield notApplicable(
          panel.ref,
          "the bars round it make no rectangle: what stands in its corners is not looked at",
        );
    for (const { panel, fittings, depth } of laid)
      yield say.lies(panel.ref, { fittings, depth: si(depth, "length") }, fittings.length === 0);
    for (const { panel, corners, needed, elsewhere, crossing } of all) {
      const at = panel.ref;
      if (needed) {
        const least = Math.min(...corners.map((corner) => corner.room));
        const fittings = corners.filter((corner) => corner.room < least + ALIKE).map(({ by }) => by);
        const room = si(least, "length");
        const [along, across] = [si(needed[0], "length"), si(needed[1], "length")];
        yield say.corner(at, { fittings, room, along, across }, { measured: room, limit: asked.at(at) });
      }
      if (elsewhere.length > 0) {
        const depth = si(Math.max(...elsewhere.map((one) => one.depth)), "length");
        yield say.edge(at, { fittings: elsewhere.map(({ by }) => by), depth }, false);
      }
      for (const { by, depth } of crossing) yield say.crossed(at, { bar: by, depth: si(depth, "length") }, false);
    }
  },
});
