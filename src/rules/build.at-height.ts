import { workHeight } from "../criteria/work-height.ts";
import { highWork } from "../facts/bench-work.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "build.at-height",
  title: "What can be built on the bench is not built overhead",
  group: "access and build",
  level: "note",
  basis: ["common practice"],
  needs: { highWork },
  criteria: { workHeight },
  messages: {
    high: {
      text: "screws of joints that could be built flat on the bench are driven {height:length} over the floor, {screw:screw} the highest",
      advice: "put the bars of that flat frame into one group, or leave the groups out",
      measures: "length",
      sense: "at most",
    },
  },
  *inspect({ highWork: work }, { workHeight: most }, say) {
    const [first] = work;
    if (!first) {
      yield notApplicable(frameRef, "what can be built on the bench is");
      return;
    }
    const highest = work.reduce((a, b) => (b.height > a.height ? b : a), first);
    const height = si(highest.height, "length");
    yield say.high(frameRef, { height, screw: highest.screw }, { measured: height, limit: most });
  },
});
