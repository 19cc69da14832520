import { defineCriterion } from "../criteria/criterion.ts";
import { sitsInSlot } from "../facts/landing.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const tipClearance = defineCriterion({
  name: "tip-clearance",
  of: "frame",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "10 mm"],
  about: "room between the tip of a screw and the slot floor",
  basis: "common practice: a screw that bottoms feels tight and clamps nothing",
});

const nutThread = defineCriterion({
  name: "nut-thread",
  of: "frame",
  quantity: "ratio",
  standard: "0.9",
  within: ["0.3", "2"],
  about: "share of the nut's thread that the screw must reach",
  basis: "common practice",
});

export const rule = defineRule({
  id: "screw.misfit",
  title: "Screws are long enough to hold and short enough to clamp",
  group: "joints",
  level: "reject",
  basis: ["geometry", "common practice"],
  needs: { screwedParts },
  criteria: { clearance: tipClearance, thread: nutThread },
  messages: {
    bottoms: {
      text: "{screw:word} has {room:length} between its tip and the slot floor",
      overlap: "{screw:word} is {room:length} too long: its tip meets the slot floor before the head clamps",
      advice: "take a shorter screw",
      measures: "length",
      sense: "at least",
    },
    short: {
      text: "{screw:word} reaches {engaged:length} into its nut",
      advice: "take a longer screw",
      measures: "length",
      sense: "at least",
    },
    shallow: {
      text: "{screw:word} reaches {engaged:length} into the tapped core",
      advice: "take a longer screw",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ screwedParts: parts }, { clearance, thread }, say) {
    for (const connector of parts.all) {
      for (const placedScrew of connector.screws) {
        const { screw, grip, into } = placedScrew;
        if (into.kind === "bore") {
          if (connector.part?.kind !== "end-screw") continue;
          const engaged = si(into.engaged, "length");
          yield say.shallow(
            placedScrew.ref,
            { screw: screw.name, engaged },
            {
              measured: engaged,
              limit: {
                value: connector.part.engagement,
                from: "stock",
                basis: "thread the connector needs in the core",
              },
            },
          );
          continue;
        }
        // An end fastener's own screw is made for its length; what it lands on is looked at elsewhere.
        if (connector.part?.kind === "end-fastener" || !sitsInSlot(into.landing) || !into.nut || !into.landing.slot)
          continue;
        const { slot } = into.landing;
        const room = si(slot.depth - (screw.length - grip), "length");
        yield say.bottoms(placedScrew.ref, { screw: screw.name, room }, { measured: room, limit: clearance });
        const engaged = si(Math.max(0, Math.min(screw.length - grip - slot.lip, into.nut.engagement)), "length");
        yield say.short(
          placedScrew.ref,
          { screw: screw.name, engaged },
          { measured: engaged, limit: { ...thread, value: si(thread.value * into.nut.engagement, "length") } },
        );
      }
    }
  },
});
