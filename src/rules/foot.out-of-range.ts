import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import { defineFact } from "../facts/fact.ts";
import { offTheFloor, standings } from "../facts/standings.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const drawn = defineCriterion({
  name: "foot-gap",
  of: "frame",
  quantity: "length",
  standard: "1 mm",
  within: ["0.1 mm", "20 mm"],
  about: "how far the height a foot is set to may differ from where its bar is drawn",
  basis: "common practice: about what a foot is turned by when the frame is levelled",
});

const floorHeight = defineFact<number>({ id: "floor-height", compute: (_, frame) => frame.floor.z });

/** Heights nearer to a bound of the range than this are on it, m: the last digit a drawing gives. */
const LAST_DIGIT = 5e-5;

export const rule = defineRule({
  id: "foot.out-of-range",
  title: "Feet reach the floor within their range",
  group: "stands",
  level: "hold",
  basis: ["geometry: range of the part"],
  needs: { standings, floorHeight },
  criteria: { gap: drawn },
  messages: {
    short: {
      text: "carries its bar {height:length} over the floor, more than its greatest height",
      advice: "draw the bar lower, or take a longer foot",
      measures: "length",
    },
    long: {
      text: "carries its bar {height:length} over the floor, less than its least height",
      overlap: "its bar is drawn {height:length} below the floor",
      advice: "draw the bar higher, or take a shorter foot",
      measures: "length",
      sense: "at least",
    },
    apart: {
      text: "is set to a height {gap:length} off that of the bar's end",
      advice: "set the foot to the height of the bar's end, or draw the bar to it",
      measures: "length",
    },
  },
  *inspect({ standings: feet, floorHeight: floor }, { gap: allowed }, say) {
    for (const standing of feet.all) {
      const { stand, top } = standing;
      if (offTheFloor(standing)) {
        yield notApplicable(stand.ref, "anchored to a wall or ceiling: how far it is to what holds it is not drawn");
        continue;
      }
      const [low, high] = stand.part.raise;
      const drawnAt = top[2] - floor;
      // A part of one height is drawn to it as exactly as a file's digits go.
      const bound = [low, high].find((limit) => Math.abs(limit - drawnAt) < LAST_DIGIT);
      const height = bound ?? si(drawnAt, "length");
      const within = (value: typeof low): Limit<"length"> => ({ value, from: "stock", basis: "range of the part" });
      yield say.short(stand.ref, { height }, { measured: height, limit: within(high) });
      yield say.long(stand.ref, { height }, { measured: height, limit: within(low) });
      if (stand.raise === undefined) continue;
      const gap = si(Math.abs(stand.raise - height), "length");
      yield say.apart(stand.ref, { gap }, { measured: gap, limit: allowed });
    }
  },
});
