import { standFits } from "../facts/stand-fits.ts";
import { downwards } from "../facts/standings.ts";
import { frameRef, ref } from "../model/ref.ts";
import { notApplicable } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

/** A foot on its ball joint stands level under a leg that leans; beyond this (cosine, 45°) it lies on its side. */
const STEEPEST = Math.SQRT1_2;

export const rule = defineRule({
  id: "stand.misfit",
  title: "Feet and casters find metal to be screwed into",
  group: "stands",
  level: "reject",
  basis: ["geometry", "common practice"],
  needs: { standFits },
  criteria: {},
  messages: {
    thread: {
      text: "its stem, {thread:word}, does not hold in {bar:bar}, whose core is tapped {core:word}",
      advice: "take a foot or caster with the thread of the core, or a leg whose core takes that stem",
    },
    coreless: {
      text: "its {mount:word} has nothing to go into: {profile:word}, the profile of {bar:bar}, has no core bore",
      advice: "take a leg with a core bore in its end",
    },
    sideways: {
      text: "it sticks out sideways: the end of {bar:bar} that it goes into does not look down",
      advice: "put it under the end of an upright bar, or say that it is anchored where it holds the frame to a wall",
    },
    mitred: {
      text: "the end of {bar:bar} that it goes into is cut to a mitre against {other:bar}, which covers its core",
      advice: "let the bar end square over the foot, or put the foot under the other bar",
    },
    beside: {
      text: "its plate reaches none of the core bores in the end of {bar:bar}",
      advice: "take a foot or caster with a larger plate, or one with a stem",
    },
    unmet: {
      text: "no screw of its plate meets a core bore in the end of {bar:bar}",
      advice: "take a plate drilled to suit the leg, or a foot or caster with a stem",
    },
    partly: {
      text: "{missing:word} of its plate's {count:word} screws meet no core bore in the end of {bar:bar}: {holes:word}",
      advice:
        "take a plate whose holes all lie over core bores, or drill it to suit the leg: clamped down, eye protection on, gloves off",
      level: "hold",
    },
  },
  *inspect({ standFits: fits }, _, say) {
    if (fits.length === 0) yield notApplicable(frameRef, "it has no feet or casters");
    for (const fit of fits) {
      const { stand, body, end } = fit.standing;
      const bar = body.bar.ref;
      const { profile } = body.bar;
      const { cut } = body.bar.ends[end];
      if (stand.hold !== "anchored") {
        const stands = downwards(fit.standing) > STEEPEST;
        yield say.sideways(stand.ref, { bar }, stands);
        if (!stands) continue;
      }
      // Screws go into no end whose face lies on another bar.
      if (cut.kind === "mitre") {
        yield say.mitred(stand.ref, { bar, other: ref("bar", cut.with) }, false);
      } else if (profile.bores.length === 0) {
        const mount = fit.by === "stem" ? "stem" : "plate";
        yield say.coreless(stand.ref, { mount, profile: profile.name, bar }, false);
      } else if (fit.by === "stem") {
        const core = fit.cores.join(" or ");
        yield say.thread(stand.ref, { thread: fit.thread, bar, core }, fit.cores.includes(fit.thread));
      } else if (fit.by === "plate") yield say.beside(stand.ref, { bar }, fit.over > 0);
      else if (fit.missing.length === fit.count) yield say.unmet(stand.ref, { bar }, false);
      else {
        const values = {
          missing: String(fit.missing.length),
          count: String(fit.count),
          bar,
          holes: fit.missing.join(", "),
        };
        yield say.partly(stand.ref, values, fit.missing.length === 0);
      }
    }
  },
});
