import { prepareFrame } from "../mechanics/frame.ts";
import { solveFrame } from "../mechanics/statics/solve.ts";
import { si } from "../model/units/quantity.ts";
import { bodies } from "./bodies.ts";
import { combinations } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import { type Governed, worstOfAll } from "./governing.ts";
import { oddFloors } from "./odd-floors.ts";
import { response } from "./response.ts";
import { solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";

/** The hardest pushes of the floor on one foot. */
export interface FootPush {
  readonly foot: Foothold;
  /** On an even floor. */
  readonly push: Governed<"force">;
  /** On an uneven one: under which foot it is uneven, and the push with joints that are stiff. */
  readonly odd: { readonly push: Governed<"force">; readonly under: Foothold } | undefined;
}

/**
 * Largest push of every foot under loads at their own size: on an even floor with soft, typical and stiff joints, and where
 * the floor is declared uneven with each foot in turn over a hollow or on a bump, joints stiff. A stiff frame of four
 * feet then stands on two of them across the corner. Anchored feet are left out: what they bear depends on how they are set.
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
    const odd = new Map<Foothold, NonNullable<FootPush["odd"]>>();
    const free = feet.filter((foot) => foot.hold !== "anchored");
    const service = combined.all.filter((c) => c.kind === "service");
    const floors = oddFloors(feet, frame.floor.uneven).flatMap((floor) =>
      service.map((combination) => ({ ...floor, combination })),
    );
    if (floors.length > 0) {
      const { states } = solveFrame(
        prepareFrame(solverModel(known, all, feet, frame.stock, "stiff", "free", found.braces("stiff"))),
        combined.cases,
        floors.map(({ combination }) => combination.factors),
        floors,
      );
      for (const [i, { foot: under, combination }] of floors.entries()) {
        const state = states[i];
        if (state?.kind !== "solved") continue;
        for (const [c, foot] of free.entries()) {
          const push = state.contacts[c]?.push ?? 0;
          if (push <= (odd.get(foot)?.push.measured ?? -1)) continue;
          const governing = { combination: combination.name, bound: "stiff" } as const;
          odd.set(foot, { push: { measured: si(push, "force"), under: governing }, under });
        }
      }
    }
    return feet.flatMap((foot, i) => {
      const push =
        foot.hold === "anchored" ? undefined : worstOfAll(found.views, ["service"], "force", (v) => v.foot(i));
      return push ? [{ foot, push, odd: odd.get(foot) }] : [];
    });
  },
});
