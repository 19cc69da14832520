import { prepareFrame } from "../mechanics/frame.ts";
import { solveFrame } from "../mechanics/statics/solve.ts";
import { si } from "../model/units/quantity.ts";
import { bodies } from "./bodies.ts";
import { combinations } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import { type Governed, worstOfAll } from "./governing.ts";
import { response } from "./response.ts";
import { solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";

/** The hardest push of the floor on one foot. */
export interface FootPush {
  readonly foot: Foothold;
  readonly push: Governed<"force">;
  /** The foot that stands in a hollow or on a bump then; none: on an even floor. */
  readonly odd: Foothold | undefined;
}

/**
 * Largest push of every foot under loads at their own size: on an even floor with soft, typical and stiff joints, and where
 * the floor is declared uneven with each foot in turn that much too high or too low, joints stiff. A stiff frame of four
 * feet then stands on two of them across the corner. Casters that roll are taken on the even floor. Anchored feet are left out: what they bear depends on how they are set.
 */
export const footPushes = defineFact<
  readonly FootPush[],
  {
    response: typeof response;
    footing: typeof footing;
    structure: typeof structure;
    bodies: typeof bodies;
    combinations: typeof combinations;
  }
>({
  id: "foot-pushes",
  needs: { response, footing, structure, bodies, combinations },
  compute({ response: found, footing: feet, structure: known, bodies: all, combinations: combined }, frame) {
    if (found.kind !== "solved") return [];
    const worst = new Map<Foothold, FootPush>();
    const free = feet.filter((foot) => foot.hold !== "anchored");
    for (const [i, foot] of feet.entries()) {
      if (foot.hold === "anchored") continue;
      const push = worstOfAll(found.views, ["service"], "force", (view) => view.foot(i));
      if (push) worst.set(foot, { foot, push, odd: undefined });
    }
    const uneven = frame.floor.uneven;
    // Three feet stand firm on any floor.
    if (!(uneven > 0) || free.length < 4 || free.every((foot) => foot.hold === "rolling")) return [...worst.values()];
    const service = combined.all.filter((c) => c.kind === "service");
    const floors = free.flatMap((odd) =>
      [uneven, -uneven].flatMap((gap) =>
        service.map((combination) => ({ odd, combination, gaps: free.map((foot) => (foot === odd ? gap : 0)) })),
      ),
    );
    const { states } = solveFrame(
      prepareFrame(solverModel(known, all, feet, frame.stock, "stiff", "free", found.braces("stiff"))),
      combined.cases,
      floors.map(({ combination }) => combination.factors),
      floors.map(({ gaps }) => gaps),
    );
    for (const [i, { odd, combination }] of floors.entries()) {
      const state = states[i];
      if (state?.kind !== "solved") continue;
      for (const [c, foot] of free.entries()) {
        // Casters rated for rolling are judged by a factor instead.
        if (foot.hold === "rolling") continue;
        const push = state.contacts[c]?.push ?? 0;
        if (push <= (worst.get(foot)?.push.measured ?? -1)) continue;
        const under = { combination: combination.name, bound: "stiff" } as const;
        worst.set(foot, { foot, push: { measured: si(push, "force"), under }, odd });
      }
    }
    return [...worst.values()];
  },
});
