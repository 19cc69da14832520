import { defineCriterion } from "../criteria/criterion.ts";
import { comesBuilt } from "../facts/comes-built.ts";
import { headRoom } from "../facts/head-room.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const keyClearance = defineCriterion({
  name: "key-clearance",
  of: "frame",
  quantity: "length",
  standard: "0.5 mm",
  within: ["0.05 mm", "20 mm"],
  about: "free length between the tool on one screw and the head of the next, or between two heads",
  basis: "common practice",
});

export const rule = defineRule({
  id: "screw.crowded",
  title: "Screws leave each other room for the key",
  group: "access and build",
  level: "hold",
  basis: ["ISO 2936:2014, key sizes and arms", "ISO 4762, ISO 7380-1: head sizes", "geometry"],
  needs: { headRoom, screwedParts, comesBuilt },
  criteria: { clearance: keyClearance },
  messages: {
    key: {
      text: "the key on {screw:screw} passes {room:length} from the head of {other:screw}",
      overlap: "the key on {screw:screw} runs {room:length} into the head of {other:screw}",
      advice: "stagger the two along the bar, or put one of them on another face",
      measures: "length",
      sense: "at least",
    },
    heads: {
      text: "the head of {screw:screw} lies {room:length} from the head of {other:screw}",
      overlap: "the heads of {screw:screw} and {other:screw} run {room:length} into each other",
      advice: "move the two connectors apart",
      measures: "length",
      sense: "at least",
    },
  },
  *inspect({ headRoom: near, screwedParts: parts, comesBuilt: came }, { clearance }, say) {
    const turned = new Set(
      parts.all.filter((part) => !came.around(part)).flatMap(({ screws }) => screws.map(({ ref }) => ref.id)),
    );
    const crowded = new Set<string>();
    for (const { screw, other, keyToHead, headToHead } of near) {
      crowded.add(screw.ref.id);
      if (Number.isFinite(keyToHead) && turned.has(screw.ref.id)) {
        const room = si(keyToHead, "length");
        yield say.key(screw.ref, { screw: screw.ref, room, other: other.ref }, { measured: room, limit: clearance });
      }
      if (Number.isFinite(headToHead) && screw.ref.id < other.ref.id) {
        const room = si(headToHead, "length");
        yield say.heads(screw.ref, { screw: screw.ref, room, other: other.ref }, { measured: room, limit: clearance });
      }
    }
    // The rest have no neighbour within reach of a key.
    const far = si(1, "length");
    for (const { screws } of parts.all) {
      for (const screw of screws)
        if (!crowded.has(screw.ref.id))
          yield say.heads(
            screw.ref,
            { screw: screw.ref, room: far, other: screw.ref },
            { measured: far, limit: clearance },
          );
    }
  },
});
