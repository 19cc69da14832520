import { keeps } from "../criteria/keeps.ts";
import { sway } from "../criteria/sway.ts";
import { planAxes } from "../facts/plan-axes.ts";
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
  id: "frame.unbraced",
  title: "Something stiffer than brackets resists sway where brackets alone may not do",
  group: "frame",
  level: "note",
  basis: ["common practice"],
  needs: { response, sways, sideBracing, level: pushLevel, plan: planAxes },
  criteria: { allowed: sway },
  messages: {
    unbraced: {
      text: "along {axis:word} only brackets without side walls that way keep it upright: if they prove soft, it gives {sway:length} when pushed",
      advice: "add a brace, a panel screwed at 300 mm or closer, or brackets whose side walls stand along {axis:word}",
    },
  },
  *inspect({ response: found, sways: pushed, sideBracing: bracing, level, plan }, { allowed }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    if (!(level.height > 0)) {
      yield notApplicable(frameRef, "where it is pushed lies below the floor as drawn; frame.sways asks for it");
      return;
    }
    const limit = allowed.at(frameRef, level.height);
    for (const axis of [0, 1] as const) {
      const soft = pushed.filter((push) => push.axis === axis && push.view.bound === "soft");
      const name = plan.words(axis, 1).slice(1);
      if (soft.length === 0) {
        yield notApplicable(frameRef, `pushed along ${name} it lifts off its feet before it sways`);
        continue;
      }
      const most = soft.reduce((worst, { amount }) => Math.max(worst, amount), 0);
      const firm = bracing[axis].size > 0 || keeps(most, limit.value, "at most");
      yield say.unbraced(frameRef, { axis: name, sway: si(most, "length") }, firm);
    }
  },
});
