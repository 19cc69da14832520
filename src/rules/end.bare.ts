import { keeps } from "../criteria/keeps.ts";
import { openEndArea } from "../criteria/open-end.ts";
import { touchHeight } from "../criteria/touch-height.ts";
import { endReach } from "../facts/end-reach.ts";
import { meetingWords } from "../facts/end-words.ts";
import { type EndState, ends } from "../facts/ends.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

/** Ends that look the same way within half of this share one side of the frame; sides are told apart by the nearest 90° or 45°. */
function sideOf(end: EndState): string {
  return end.normal.map((c) => (Math.abs(c) < 0.38 ? "0" : c > 0 ? "+" : "-")).join("");
}

export const rule = defineRule({
  id: "end.bare",
  title: "Cut ends are covered",
  group: "safety",
  level: "hold",
  basis: ["common practice", "ISO 12100:2010, 6.2.2.1", "ISO 13857:2019: reach of fingers, arms and legs"],
  needs: { ends, endReach },
  criteria: { open: openEndArea, reach: touchHeight },
  messages: {
    bare: {
      text: "sawn metal lies open at {ends:parts}, {where:word}: {area:area}{most:word}",
      advice: 'let the standard caps stand ("caps": "all-open-ends"), name a cap, or close the end with another part',
      measures: "area",
    },
  },
  *inspect({ ends: all, endReach: reaching }, { open, reach }, say) {
    const sides = new Map<string, EndState[]>();
    for (const end of all) {
      if (end.height > reach.value) {
        yield notApplicable(end.ref, "out of reach");
        continue;
      }
      const limit = open.at(end.bar);
      const area = si(end.open, "area");
      if (keeps(end.open, limit.value, "at most"))
        yield say.bare(end.ref, { ends: [end.ref], where: "", area, most: "" }, { measured: area, limit });
      else if (reaching.keptOff(end)) yield notApplicable(end.ref, "panels and bars keep hands off it");
      else {
        const side = sides.get(sideOf(end));
        if (side) side.push(end);
        else sides.set(sideOf(end), [end]);
      }
    }
    // One finding a side of the frame: ten open ends in a row are one thing to put right.
    for (const side of sides.values()) {
      const worst = side.reduce((a, b) => (b.open > a.open ? b : a));
      const area = si(worst.open, "area");
      yield say.bare(
        worst.ref,
        {
          ends: side.map((end) => end.ref),
          where: meetingWords(side, reaching),
          area,
          most: side.length > 1 ? " at the worst of them" : "",
        },
        { measured: area, limit: open.at(worst.bar) },
      );
    }
  },
});
