import { defineCriterion } from "../criteria/criterion.ts";
import { defineFact } from "../facts/fact.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { frameRef } from "../model/ref.ts";
import { formatQuantity } from "../model/units/format-quantity.ts";
import { si } from "../model/units/quantity.ts";
import { defineRule } from "./shape/rule.ts";

const slotSizes = defineCriterion({
  name: "slot-sizes",
  of: "frame",
  quantity: "count",
  standard: "1",
  within: ["1", "10"],
  about: "how many slot sizes a frame may mix: each brings nuts and connectors of its own",
  basis: "common practice: nuts of one size do for all",
});

const keySizes = defineCriterion({
  name: "key-sizes",
  of: "frame",
  quantity: "count",
  standard: "3",
  within: ["1", "20"],
  about: "how many sizes of key a frame may need",
  basis: "common practice: a key changed often is a key mislaid",
});

/** "1/4 and 5/16". */
function inWords(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

interface Variety {
  readonly slots: readonly string[];
  readonly keys: readonly string[];
}

const variety = defineFact<Variety, { parts: typeof screwedParts }>({
  id: "variety",
  needs: { parts: screwedParts },
  compute({ parts }, frame) {
    const slots = new Set(frame.bars.map((bar) => bar.profile.slotSize));
    const keys = new Map<number, string>();
    for (const connector of parts.all) {
      // What nobody chose can be chosen otherwise.
      if (connector.usual) continue;
      for (const { screw } of connector.screws)
        keys.set(Math.round(screw.key * 1e6), formatQuantity(screw.key, "length", frame.units));
    }
    return { slots: [...slots].sort(), keys: [...keys].sort(([a], [b]) => a - b).map(([, text]) => text) };
  },
});

export const rule = defineRule({
  id: "stock.mixed",
  title: "One slot size and few keys do for the whole frame",
  group: "access and build",
  level: "note",
  basis: ["common practice"],
  needs: { variety },
  criteria: { slots: slotSizes, keys: keySizes },
  messages: {
    slots: {
      text: "its bars have {count:count} slot sizes, {names:word}: nuts and connectors of one do not fit the other",
      advice: "draw all bars from one series",
      measures: "count",
    },
    keys: {
      text: "its screws take {count:count} sizes of key: {names:word}",
      advice: "use screws with the same head throughout",
      measures: "count",
    },
  },
  *inspect({ variety: found }, { slots, keys }, say) {
    const slotCount = si(found.slots.length, "count");
    yield say.slots(frameRef, { count: slotCount, names: inWords(found.slots) }, { measured: slotCount, limit: slots });
    const keyCount = si(found.keys.length, "count");
    yield say.keys(frameRef, { count: keyCount, names: inWords(found.keys) }, { measured: keyCount, limit: keys });
  },
});
