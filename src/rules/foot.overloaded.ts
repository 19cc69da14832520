import { defineCriterion, type Limit } from "../criteria/criterion.ts";
import { footPushes } from "../facts/foot-pushes.ts";
import { footing } from "../facts/footing.ts";
import { openDoorPushes } from "../facts/open-door-pushes.ts";
import { response } from "../facts/response.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { type Si, si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

const rolling = defineCriterion({
  name: "rolling-factor",
  of: "frame",
  quantity: "ratio",
  standard: "1.5",
  within: ["1", "5"],
  about: "by how much more than its share at rest a caster must bear: thresholds, and wheels that hang in the air",
  basis: "common practice: half as much again for rolling over joints",
});

/** A foot is told to bear more in another standing where it does by more than rounding. */
const MORE = 1 + 1e-6;

export const rule = defineRule({
  id: "foot.overloaded",
  title: "Feet and casters bear what stands on them",
  group: "stands",
  level: "hold",
  basis: ["statics of the frame on feet that push and do not pull (docs/method)", "common practice"],
  needs: { response, footPushes, openDoorPushes, footing },
  criteria: { rolling },
  messages: {
    overloaded: {
      text: "bears {push:force}{floor:word}",
      advice: "take a stronger foot or caster, add another, or spread the weight",
      measures: "force",
      working: {
        formula: "largest push of the floor × factor for rolling",
        figures: "{still:force} × {factor:ratio}",
      },
    },
  },
  *inspect({ response: found, footPushes: pushes, openDoorPushes: opened, footing: feet }, { rolling: factor }, say) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const foot of feet) {
      const worst = pushes.find((push) => push.foot === foot);
      if (foot.capacity === undefined) yield notApplicable(foot.ref, "the bar itself stands on the floor");
      else if (!worst) yield notApplicable(foot.ref, "anchored");
      else {
        const rolls = foot.hold === "rolling";
        // What rolls is driven over thresholds on its four wheels with its doors shut, and stands on an uneven spot at rest.
        const driven = worst.push.measured * (rolls ? factor.value : 1);
        const doors = opened.get(foot);
        const ways = [
          ...(worst.odd ? [{ push: worst.odd.push, floor: `, with ${worst.odd.under.ref.id} on an uneven spot` }] : []),
          ...(doors ? [{ push: doors.push, floor: `, with ${doors.open}` }] : []),
        ];
        const resting = ways
          .filter(({ push }) => push.measured > driven * MORE)
          .sort((a, b) => b.push.measured - a.push.measured)[0];
        const { measured, under, otherBounds } = resting?.push ?? worst.push;
        const times = resting || !rolls ? 1 : factor.value;
        const scaled = (force: Si<"force">): Si<"force"> => si(force * times, "force");
        const push = si(measured * times, "force");
        const limit: Limit<"force"> = {
          value: si(foot.capacity, "force"),
          from: "stock",
          basis: "capacity of the part",
        };
        const floor = resting?.floor ?? (rolls ? " as it rolls" : "");
        yield say.overloaded(
          foot.ref,
          { push, floor, still: measured, factor: si(times, "ratio") },
          {
            measured: push,
            limit,
            under,
            ...(otherBounds
              ? {
                  otherBounds: Object.fromEntries(
                    Object.entries(otherBounds).map(([bound, force]) => [bound, scaled(force)]),
                  ),
                }
              : {}),
          },
        );
      }
    }
  },
});
