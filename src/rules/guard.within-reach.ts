import type { Limit } from "../criteria/criterion.ts";
import { guardReach } from "../facts/guard-reach.ts";
import { openingRowWords } from "../facts/opening-row-words.ts";
import { LOWEST_GUARD } from "../facts/reach-over.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const distance = (value: number, basis: string): Limit<"length"> => ({
  value: si(value, "length"),
  from: "computed",
  basis,
});

export const rule = defineRule({
  id: "guard.within-reach",
  title: "Guards keep hands, feet and bodies away from hazards",
  group: "safety",
  level: "hold",
  basis: [
    "ISO 13857:2019, Table 4: reach through openings",
    "ISO 13857:2019, Tables 1, 2 and 7: reach over guards and with legs (from memory)",
  ],
  needs: { guardReach },
  criteria: {},
  messages: {
    through: {
      text: "lies {distance:length} behind an opening on its {side:word}, a {form:word} {clear:length} wide: {row:word}",
      advice: "close the opening or make it narrower, or move the guard away from the hazard",
      measures: "length",
      sense: "at least",
    },
    over: {
      text: "lies {distance:length} behind its {side:word}, which people reach over: it is {height:length} high",
      advice: "make the guard higher, put a roof on it, or move it away from the hazard",
      measures: "length",
      sense: "at least",
    },
    body: {
      text: "an opening on its {side:word} lets a whole body in",
      advice: "close the opening with a panel or a door",
      level: "reject",
    },
    low: {
      text: "its {side:word} is {height:length} high and is stepped over",
      advice: "make the guard at least 1 m high; the distance to the hazard then decides",
      measures: "length",
      sense: "at least",
      level: "reject",
    },
    bare: {
      text: "nothing stands between it and people on its {side:word}",
      advice: "put bars with a panel or a door there",
      level: "reject",
    },
  },
  *inspect({ guardReach: zones }, _, say) {
    if (zones.length === 0) yield notApplicable(frameRef, "no zone is declared");
    for (const { zone, sides, open } of zones) {
      const at = zone.ref;
      if (sides.length + open.length === 0) yield notApplicable(at, "out of reach of the floor");
      for (const side of open) yield say.bare(at, { side }, false);
      for (const { name: side, through, over } of sides) {
        if (through?.body) yield say.body(at, { side }, false);
        else if (through) {
          const measured = si(through.distance, "length");
          const limit = distance(
            through.needed,
            `ISO 13857: what ${through.row.table === 7 ? "a leg" : "an arm"} reaches through a ${through.form} of that width`,
          );
          yield say.through(
            at,
            {
              distance: measured,
              side,
              form: through.form,
              clear: si(through.clear, "length"),
              row: openingRowWords(through.row),
            },
            { measured, limit },
          );
        } else yield say.body(at, { side }, true);
        if (!over) continue;
        const height = si(over.guard, "length");
        const least = distance(LOWEST_GUARD, "ISO 13857: the tables begin at guards of 1 m");
        yield say.low(at, { side, height }, { measured: height, limit: least });
        if (over.needed === undefined) continue;
        const measured = si(over.distance, "length");
        const limit = distance(over.needed, `ISO 13857: reach over a guard of that height, ${zone.risk} risk`);
        yield say.over(at, { distance: measured, side, height }, { measured, limit });
      }
    }
  },
});
