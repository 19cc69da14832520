import { sway } from "../criteria/sway.ts";
import { governing } from "../facts/governing.ts";
import { pushLevel } from "../facts/push-level.ts";
import { response } from "../facts/response.ts";
import { sideBracing } from "../facts/side-bracing.ts";
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
  needs: { response, sways, sideBracing, level: pushLevel },
  criteria: { allowed: sway },
  messages: {
    sways: {
      text: "gives {sway:length} sideways when pushed at a height of {height:length}",
      advice: "add a brace or a screwed panel, larger or gusseted brackets, or a rail lower down",
      measures: "length",
    },
  },
  *inspect({ response: found, sways: pushed, sideBracing: bracing, level }, { allowed }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    // The solver knows no panels: where a screwed one braces, the sway of the bars alone says nothing.
    const open = pushed.filter(({ axis }) => !bracing[axis].has("panel"));
    if (pushed.length > 0 && open.length === 0) {
      yield notApplicable(frameRef, "screwed panels brace it both ways");
      return;
    }
    const amounts = new Map(open.map(({ view, amount }) => [view, amount]));
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
