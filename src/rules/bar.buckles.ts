import { memberFactor } from "../criteria/member-factor.ts";
import { safetyFactor } from "../criteria/safety-factor.ts";
import { bodies } from "../facts/bodies.ts";
import { bracing } from "../facts/bracing.ts";
import { bucklingUse, columnOf } from "../facts/buckling-use.ts";
import { governingView, worstOfAll } from "../facts/governing.ts";
import { dividedBy, dividedWords, loadFactors } from "../facts/load-factors.ts";
import { materials } from "../facts/materials.ts";
import { response } from "../facts/response.ts";
import { stability } from "../facts/stability.ts";
import { whyNotSolved } from "../facts/why-not-solved.ts";
import { frameRef } from "../model/ref.ts";
import { si } from "../model/units/quantity.ts";
import { notApplicable, undecided } from "./shape/judgement.ts";
import { defineRule } from "./shape/rule.ts";

export const rule = defineRule({
  id: "bar.buckles",
  title: "Bars carry compression and bending without buckling",
  group: "bars",
  level: "reject",
  basis: [
    "EN 1999-1-1:2007, 6.3.1: flexural buckling; 6.3.2: lateral-torsional buckling",
    "linear sum of N, My and Mz, on the safe side of EN 1999-1-1:2007, 6.3.3",
    "sway moments grown by 1 / (1 − 1 / α_cr) of the frame: EN 1999-1-1:2007, 5.2.2",
    "EN 1990:2002, 6.4: strength combinations",
  ],
  needs: { response, bodies, bracing, materials, stability, by: loadFactors },
  criteria: { factor: memberFactor, safety: safetyFactor },
  messages: {
    buckles: {
      text: "pressed by {compression:force} over a buckling length of {length:length} and bent, it would have to bear {use:ratio} times what it can",
      advice: "hold it sideways half way, take a stiffer profile, or lighten its load",
      measures: "ratio",
      working: {
        formula: "N/N_b,Rd + M_y/M_y,Rd + M_z/M_z,Rd, moments grown by sway and bow",
        figures:
          "{compression:force} / {bearsN:force} + {my:moment} / {bearsMy:moment} + {mz:moment} / {bearsMz:moment}",
      },
    },
  },
  *inspect(
    { response: found, bodies: bars, bracing: held, materials: known, stability: whole, by },
    { factor, safety },
    say,
  ) {
    if (found.kind !== "solved") {
      yield undecided(frameRef, whyNotSolved(found));
      return;
    }
    for (const { bar } of bars.values()) {
      const material = known.get(bar.profile.material);
      const holds = held.get(bar.ref.id);
      if (!material || !holds) {
        yield notApplicable(bar.ref, "no length left");
        continue;
      }
      const given = factor.at(bar.ref);
      const divided = dividedBy(by, safety.at(bar.ref).value);
      const column = columnOf(bar.profile, material, holds, given.value * divided);
      const inView = (view: (typeof found.views)[number]) => {
        const forces = view.forces(bar.ref.id);
        const growth = whole.amplification(view.combination);
        // A frame that sways over as a whole is rejected by frame.buckles; its bars are then judged by themselves.
        return forces && bucklingUse(forces, column, Number.isFinite(growth) ? growth : 1, by.reserve);
      };
      const governed = worstOfAll(found.views, ["strength"], "ratio", (view) => inView(view)?.use);
      const view = governed && governingView(found.views, governed);
      const worst = view && inView(view);
      if (!governed || !worst) {
        yield notApplicable(bar.ref, "neither pressed nor tall enough to buckle: its stress says it all");
        continue;
      }
      const limit = {
        value: si(1, "ratio"),
        from: given.from,
        basis: `proof strength of ${material.name} divided by ${given.value} (${given.basis})${dividedWords(divided)}`,
      };
      yield say.buckles(
        bar.ref,
        {
          compression: si(worst.compression, "force"),
          length: si(worst.length, "length"),
          use: governed.measured,
          bearsN: si(worst.resists.N, "force"),
          my: si(worst.acting.My, "moment"),
          bearsMy: si(worst.resists.My, "moment"),
          mz: si(worst.acting.Mz, "moment"),
          bearsMz: si(worst.resists.Mz, "moment"),
        },
        { ...governed, limit },
      );
    }
  },
});
