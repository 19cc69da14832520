import { sway } from "../criteria/sway.ts";
import { governing } from "../facts/governing.ts";
import { pushLevel } from "../facts/push-level.ts";
import { response } from "../facts/response.ts";
import { sways } from "../facts/sway.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "frame.sways",
  title: "The frame stands firm when pushed",
  group: "frame",
  level: "hold",
  basis: ["linear elastic frame analysis (docs/method)", "EN 1990:2002, 6.5: serviceability"],
  needs: { response, sways, level: pushLevel },
  criteria: { allowed: sway },
  messages: {
    sways: {
      text: "gives {sway:length} sideways when pushed at a height of {height:length}",
      advice: "add a brace or a screwed panel, larger or gusseted brackets, or a rail lower down",
      measures: "length",
      working: { formula: "(u₊ − u₋) / 2: pushed to one side and to the other" },
    },
  },
  *inspect({ response: found, sways: pushed, level }, { allowed }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    if (!(level.height > 0)) {
      yield undecided(
        frameRef,
        "the height at which it is pushed: it lies below the floor as drawn; set `floor.z` to where people stand",
      );
      return;
    }
    const amounts = new Map(pushed.map(({ view, amount }) => [view, amount]));
    const governed = governing(found.views, ["sway"], "length", (view) => amounts.get(view));
    if (!governed) {
      yield notApplicable(frameRef, "it lifts off its feet before it sways; frame.tips says how far");
      return;
    }
    const height = si(level.height, "length");
    yield say.sways(
      frameRef,
      { sway: governed.measured, height },
      { ...governed, limit: allowed.at(frameRef, level.height) },
    );
  },
});
