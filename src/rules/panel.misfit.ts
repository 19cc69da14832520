import { defineCriterion } from "../criteria/criterion.ts";
import { panelFits } from "../facts/panel-fits.ts";
import { shapedFits } from "../facts/shaped-fits.ts";
import { type SlotEdge, slotPanels } from "../facts/slot-panels.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const panelEngagement = defineCriterion({
  name: "panel-engagement",
  of: "panels",
  quantity: "length",
  standard: "3 mm",
  within: ["0.5 mm", "50 mm"],
  about: "how much of a panel's edge must stay in its slot",
  basis: "common practice; more where a panel may be kicked",
});

const panelRoom = defineCriterion({
  name: "panel-room",
  of: "panels",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "20 mm"],
  about: "room a panel needs between the floors of its slots when it has grown most",
  basis: "common practice",
});

const slotClearance = defineCriterion({
  name: "slot-clearance",
  of: "panels",
  quantity: "length",
  standard: "0.2 mm",
  within: ["0.05 mm", "5 mm"],
  about: "how much wider than the sheet a slot without a gasket must be",
  basis: "common practice: what sheets vary in thickness",
});

const panelOffset = defineCriterion({
  name: "panel-offset",
  of: "panels",
  quantity: "length",
  standard: "1 mm",
  within: ["0.1 mm", "10 mm"],
  about: "how far a slot may lie out of the plane of the panel in it",
  basis: "common practice: what a gasket takes up",
});

const slotTurn = defineCriterion({
  name: "slot-turn",
  of: "panels",
  quantity: "angle",
  standard: "2 deg",
  within: ["0.1°", "15°"],
  about: "by how much a slot may look past the panel in it",
  basis: "common practice",
});

/** Measures nearer to each other than this are the same, m or rad. */
const ALIKE = 1e-9;

/** The edge of which a measure is greatest. */
function worst(edges: readonly SlotEdge[], measure: (edge: SlotEdge) => number): SlotEdge | undefined {
  return edges.reduce<SlotEdge | undefined>((a, b) => (a && measure(a) >= measure(b) - ALIKE ? a : b), undefined);
}

export const rule = defineRule({
  id: "panel.misfit",
  title: "Panels fit their slots, warm and cold",
  group: "panels",
  level: "hold",
  basis: ["geometry", "thermal expansion", "common practice"],
  needs: { slotPanels, panelFits, shapedFits },
  criteria: {
    engagement: panelEngagement,
    roomAsked: panelRoom,
    clearance: slotClearance,
    offset: panelOffset,
    turn: slotTurn,
  },
  messages: {
    slotless: {
      text: "{bar:bar} has no open slot towards {panel:panel}",
      advice: "take a profile with an open slot there, or hold this edge in another way",
      level: "reject",
    },
    thick: {
      text: "{sheet:word} has {clearance:length} of room in the slot of {bar:bar}",
      overlap: "{sheet:word} is {clearance:length} too thick for the slot of {bar:bar}",
      advice: "take a thinner sheet, or a profile with a wider slot",
      measures: "length",
      sense: "at least",
      level: "reject",
    },
    strip: {
      text: "gasket {gasket:word} is made for slots {made:word}; {bar:bar} has slots {slots:word}",
      advice: "take a gasket made for the slots of the profile",
    },
    thin: {
      text: "{sheet:word} is {thickness:length} thick; gasket {gasket:word} grips sheets of {least:length} and more",
      advice: "take a thicker sheet, or another gasket",
      measures: "length",
      sense: "at least",
    },
    tight: {
      text: "{sheet:word} is {thickness:length} thick; gasket {gasket:word} takes sheets of {most:length} at most",
      advice: "take a thinner sheet, or another gasket",
      measures: "length",
    },
    off: {
      text: "the slot of {bar:bar} lies {off:length} out of the plane of the panel",
      advice: "line the bars up so that their slots lie in one plane, or name another slot of the bar",
      measures: "length",
    },
    turned: {
      text: "the slot of {bar:bar} looks {turned:angle} past the panel",
      advice: "turn the bar so that its slot looks into the panel",
      measures: "angle",
    },
    large: {
      text: "it is {size:length} large from {low:bar} to {high:bar}",
      advice: "order it smaller, or leave out size to have it worked out",
      measures: "length",
      level: "reject",
    },
    jams: {
      text: "from {low:bar} to {high:bar} it has {room:length} of room when it has grown most",
      overlap: "from {low:bar} to {high:bar} it is {room:length} too large when it has grown most: it jams and buckles",
      advice: "order it smaller, or leave out size to have it worked out",
      measures: "length",
      sense: "at least",
    },
    slips: {
      text: "from {low:bar} to {high:bar}, {engaged:length} of it stay in one slot when it has shrunk most and lies at the floor of the other",
      overlap:
        "from {low:bar} to {high:bar}, it comes {engaged:length} out of one slot when it has shrunk most and lies at the floor of the other",
      advice: "order it larger, take a deeper slot or gasket, or divide the opening by another bar",
      measures: "length",
      sense: "at least",
    },
    leaves: {
      text: "{engaged:length} of it stay in the slot of {bar:bar} when it has shrunk most and is pushed away from there",
      overlap:
        "it comes {engaged:length} out of the slot of {bar:bar} when it has shrunk most and is pushed away from there",
      advice: "take a deeper slot or gasket, or divide the opening by another bar",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ slotPanels: { all, planeless }, panelFits: fitting, shapedFits: shaped }, given, say) {
    for (const panel of planeless) yield undecided(panel.ref, "the bars round it span no plane");
    for (const { panel, edges, slotless, rectangle } of all) {
      if (panel.held.kind !== "in-slot") continue;
      const { sheet, held, ref: at } = panel;
      const { gasket } = held;
      for (const bar of slotless) yield say.slotless(at, { bar: ref("bar", bar), panel: at }, false);
      const off = worst(edges, (edge) => edge.off);
      const turned = worst(edges, (edge) => edge.turned);
      const narrow = worst(edges, (edge) => -edge.slot.opening);
      if (!off || !turned || !narrow) continue;
      const [away, past] = [si(off.off, "length"), si(turned.turned, "angle")];
      yield say.off(at, { bar: off.body.bar.ref, off: away }, { measured: away, limit: given.offset.at(at) });
      yield say.turned(at, { bar: turned.body.bar.ref, turned: past }, { measured: past, limit: given.turn.at(at) });
      if (!gasket) {
        const clearance = si(narrow.slot.opening - sheet.thickness, "length");
        const bar = narrow.body.bar.ref;
        yield say.thick(
          at,
          { sheet: sheet.name, bar, clearance },
          { measured: clearance, limit: given.clearance.at(at) },
        );
      }
      if (gasket) {
        const other = edges.find(({ body }) => body.bar.profile.slotSize !== gasket.slotSize) ?? narrow;
        const { ref: bar, profile } = other.body.bar;
        yield say.strip(
          at,
          { gasket: gasket.name, made: gasket.slotSize, bar, slots: profile.slotSize },
          gasket.slotSize === profile.slotSize,
        );
        const [least, most] = gasket.sheet;
        const values = { sheet: sheet.name, thickness: sheet.thickness, gasket: gasket.name };
        const basis = "sheet thicknesses the gasket is made for";
        const measured = sheet.thickness;
        yield say.thin(at, { ...values, least }, { measured, limit: { value: least, from: "stock", basis } });
        yield say.tight(at, { ...values, most }, { measured, limit: { value: most, from: "stock", basis } });
      }
      if (rectangle || slotless.length > 0) continue;
      const fit = shaped.find((one) => one.panel === panel);
      if (fit) {
        const kept = si(fit.engaged, "length");
        const bar = fit.leaves.body.bar.ref;
        yield say.leaves(at, { engaged: kept, bar }, { measured: kept, limit: given.engagement.at(at) });
      } else yield undecided(at, "it is no rectangle and has a free edge, so its outline is not known");
    }
    for (const { panel, fits } of fitting) {
      const at = panel.ref;
      for (const { edges, opening, depths, size, room, engaged } of fits) {
        const [low, high] = [edges[0].body.bar.ref, edges[1].body.bar.ref];
        if (panel.size) {
          const between = si(opening + depths[0] + depths[1], "length");
          const measured = si(size, "length");
          const basis = "from slot floor to slot floor";
          yield say.large(
            at,
            { size: measured, low, high },
            { measured, limit: { value: between, from: "computed", basis } },
          );
          const left = si(room, "length");
          // What does not even go in cold is said once.
          if (size <= between)
            yield say.jams(at, { room: left, low, high }, { measured: left, limit: given.roomAsked.at(at) });
        }
        const kept = si(engaged, "length");
        yield say.slips(at, { engaged: kept, low, high }, { measured: kept, limit: given.engagement.at(at) });
      }
    }
  },
});
