import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import { faceNormal } from "../facts/axes.ts";
import { facingWords } from "../facts/axis-words.ts";
import { bodies } from "../facts/bodies.ts";
import { fittings } from "../facts/fittings.ts";
import { type Landing, SLOT_PLAY } from "../facts/landing.ts";
import { placements } from "../facts/placements.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { ref } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const offSlot = defineCriterion({
  name: "off-slot",
  quantity: "length",
  standard: `${SLOT_PLAY * 1000} mm`,
  within: ["0.05 mm", "5 mm"],
  about: "how far a screw may lie beside the line of its slot",
  basis: "geometry: play of the screw in the slot opening",
});

/** Whether a screw there belongs to a slot at all, however far beside its line. */
const liesOnSlot = ({ slot, off, toEnd }: Landing): boolean =>
  slot !== undefined && toEnd.distance > 0 && off <= (slot.opening + slot.cavity) / 2;

export const rule = defineRule({
  id: "slot.mismatched",
  title: "Connectors, nuts and slots belong to each other",
  group: "joints",
  level: "reject",
  basis: ["geometry", "common practice"],
  needs: { placements, bodies, fittings, screwedParts },
  criteria: { off: offSlot },
  messages: {
    size: {
      text: "{part:word} is made for slot size {made:word}; {bar:bar} has slot size {has:word}",
      advice: "take a connector of the bar's slot size",
    },
    nut: {
      text: "no {kind:word} nut in stock takes a screw {thread:word} in the slots of {bar:bar}, size {has:word}",
      advice: "take another screw or another kind of nut",
    },
    closed: {
      text: "a screw lies on a closed slot of {bar:bar}, face {face:word}",
      advice: "turn the bar, or use an open face",
    },
    off: {
      text: "a screw lies {off:length} beside the slot of {bar:bar}, face {face:word}",
      advice: "move the connector onto the slot line",
      measures: "length",
    },
    away: {
      text: "a screw finds no slot to hold it: {bar:bar} has none there",
      advice: "put the connector on a face where each of its legs has a bar with a slot under it",
    },
    apart: {
      text: "{part:word} lies {away:length} from {bar:bar}, farther than any of its screws",
      advice: "put the hinge, pivot or latch where both bars lie under its screws",
      measures: "length",
    },
    plane: {
      text: "the leaves of {part:word} find no two faces of {first:bar} and {second:bar} in one plane: where its screws are is not known, and no tool is tried on them",
      advice:
        "draw flush the faces that the leaves lie on; where the bars cross, face on face, write a side tie in its place",
      level: "note",
    },
    astride: {
      text: "the axis of {part:word} lies midway between two planes in which {first:bar} and {second:bar} show faces: where its screws are is not known, and no tool is tried on them",
      advice: "give as its point one on the faces that the leaves lie on",
      level: "note",
    },
    misplaced: { text: "a connector cannot sit there: {why:word}", advice: "choose another connector or another face" },
  },
  *inspect({ placements: placed, bodies: all, fittings: others, screwedParts: parts }, { off }, say) {
    for (const { at, why } of placed.misplaced) yield say.misplaced(at, { why }, false);
    for (const connector of placed.connectors) {
      for (const { bar } of connector.holds) {
        const has = all.get(bar)?.bar.profile.slotSize ?? "";
        const { slotSize } = connector.part;
        yield say.size(
          connector.ref,
          { part: connector.part.name, made: slotSize, bar: ref("bar", bar), has },
          slotSize === has,
        );
      }
    }
    for (const connector of parts.all) {
      // Where the head of a tie has no open slot to lie in, its screw holds nothing.
      const { head, part: made } = connector;
      const heads = head && all.get(head.bar);
      if (head && heads) {
        const bar = heads.bar.ref;
        if (!liesOnSlot(head)) yield say.away(connector.ref, { bar }, false);
        else {
          const face = facingWords(head.face, faceNormal(heads.axes, head.face));
          yield say.closed(connector.ref, { bar, face }, !head.slot?.closed);
          const measured = si(head.off, "length");
          yield say.off(connector.ref, { off: measured, bar, face }, { measured, limit: off.at(bar) });
        }
      }
      for (const screw of connector.screws) {
        if (screw.into.kind !== "nut") continue;
        const { landing, nut } = screw.into;
        const bar = ref("bar", landing.bar);
        const has = all.get(landing.bar)?.bar.profile.slotSize ?? "";
        if (!made || made.slotSize === has) {
          yield say.nut(
            screw.ref,
            { kind: connector.choice?.nut ?? "", thread: screw.screw.thread, has, bar },
            nut !== undefined,
          );
        }
        if (!liesOnSlot(landing)) {
          yield say.away(screw.ref, { bar }, false);
          continue;
        }
        const body = all.get(landing.bar);
        const face = body ? facingWords(landing.face, faceNormal(body.axes, landing.face)) : landing.face;
        yield say.closed(screw.ref, { bar, face }, !landing.slot?.closed);
        const measured = si(landing.off, "length");
        yield say.off(screw.ref, { off: measured, bar, face }, { measured, limit: off.at(bar) });
      }
    }
    for (const { of, part, body, lies } of others) {
      const bar = body.bar.ref;
      const has = body.bar.profile.slotSize;
      yield say.size(of, { part: part.name, made: part.slotSize, bar, has }, part.slotSize === has);
      if (!lies) continue;
      const measured = si(lies.away, "length");
      const limit: Limit<"length"> = {
        value: si(lies.reach, "length"),
        from: "stock",
        basis: "from the axis of the part to its outermost screw",
      };
      yield say.apart(of, { part: part.name, away: measured, bar }, { measured, limit });
    }
    for (const { ref: at, joint, part, bars, lack } of parts.unplaced) {
      const said = others.some(
        (one) => one.of.id === joint.id && one.part === part && one.lies && one.lies.away > one.lies.reach,
      );
      if (said) continue;
      const [first, second] = [bars[0].bar.ref, bars[1].bar.ref];
      const key = lack === "no plane" ? "plane" : "astride";
      yield say[key](at, { first, second, part: part.name }, false);
    }
  },
});
