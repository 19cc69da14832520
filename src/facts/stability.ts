import { amplifier } from "../mechanics/design/second-order.ts";
import type { Combined } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";
import type { Bound } from "./joint-stiffness.ts";
import { loadFactors } from "./load-factors.ts";
import { type BucklingMode, response, type View } from "./response.ts";

export interface Stability {
  /** The strength combination nearest to buckling the frame, with typical joints; undefined where nothing is pressed. */
  readonly governing: { readonly view: View; readonly mode: BucklingMode } | undefined;
  /** α_cr of that combination with the other joint stiffnesses. */
  readonly others: ReadonlyMap<Bound, number>;
  /**
   * By how much sway and its moments grow in a strength combination because the axial forces follow the sway: 1 where α_cr
   * is 10 or more, 1/(1 − 1/α_cr) below, Infinity at 1, α_cr being taken for loads that hold the whole reserve. For combinations without an eigenvalue of their own the least one counts.
   */
  amplification(combination: Combined): number;
}

/** EN 1993-1-1:2005 and EN 1999-1-1:2007, 5.2.1: from this α_cr on a first-order analysis will do. */
const FIRST_ORDER = 10;
/** Factors this close are the same: of mirrored combinations the first one counts. */
const SAME = 1e-6;
/** Combinations looked at for each of two measures, total weight and the hardest pressed foot. */
const LOOKED_AT = 2;

/** The part of a combination that presses: what it is when the frame stands in plumb. */
const pressing = ({ name }: Combined): string => name.replace(/(, out of plumb)? along .*$/, "");

/** The names of the heaviest groups of views by a measure. */
function heaviest(groups: ReadonlyMap<string, readonly View[]>, measure: (view: View) => number): readonly string[] {
  const worst = (views: readonly View[]): number => views.reduce((most, view) => Math.max(most, measure(view)), 0);
  return [...groups]
    .map(([name, views]) => ({ name, weight: worst(views) }))
    .sort((a, b) => b.weight - a.weight)
    .slice(0, LOOKED_AT)
    .map(({ name }) => name);
}

/**
 * Stability of the whole frame under the combinations that press it most, with its feet held by friction: a buckling analysis
 * of each (Timoshenko and Gere, ch. 2), bars cut finely enough that those which bow by themselves are found too.
 */
export const stability = defineFact<
  Stability,
  { response: typeof response; footing: typeof footing; by: typeof loadFactors }
>({
  id: "stability",
  needs: { response, footing, by: loadFactors },
  compute({ response: found, footing: feet, by: { reserve } }) {
    const firstOrder = FIRST_ORDER * reserve;
    const views = found.kind === "solved" ? found.views : [];
    // On an uneven floor the legs press harder one by one, not the frame as a whole: bar.buckles looks at them.
    const standing = views.filter(
      ({ combination: c, bound }) => c.kind === "strength" && c.sideways && !c.gaps && bound === "typical",
    );
    // The four ways out of plumb press nearly alike, but which feet hold differs: all of them are looked at.
    const alike = new Map<string, View[]>();
    for (const view of standing) {
      const name = pressing(view.combination);
      const group = alike.get(name);
      if (group) group.push(view);
      else alike.set(name, [view]);
    }
    // Reactions rather than pushes of contact: an anchored foot presses as well.
    const pushes = new Map(standing.map((view) => [view, feet.map((_, i) => Math.max(0, view.reaction(i).force[2]))]));
    const total = (view: View): number => (pushes.get(view) ?? []).reduce((sum, push) => sum + push, 0);
    const most = (view: View): number => (pushes.get(view) ?? []).reduce((a, b) => Math.max(a, b), 0);
    const chosen = new Set([...heaviest(alike, total), ...heaviest(alike, most)]);
    const factors = new Map<string, number>();
    let governing: Stability["governing"];
    for (const name of chosen)
      for (const view of alike.get(name) ?? []) {
        const own = factors.get(name) ?? Infinity;
        // What neither governs nor falls below where first-order analysis does need not be known more closely.
        const matters = Math.max(governing?.mode.factor ?? Infinity, Math.min(own, firstOrder));
        if (matters < Infinity && view.stands(matters * (1 - SAME))) continue;
        const mode = view.buckling();
        factors.set(name, Math.min(own, mode?.factor ?? Infinity));
        if (mode && (!governing || mode.factor < governing.mode.factor)) governing = { view, mode };
      }
    const others = new Map<Bound, number>();
    for (const view of views) {
      if (!governing || view.bound === "typical" || view.combination !== governing.view.combination) continue;
      others.set(view.bound, view.buckling()?.factor ?? Infinity);
    }
    const least = governing?.mode.factor ?? Infinity;
    return {
      governing,
      others,
      amplification: (combination) => {
        if (combination.kind !== "strength") return 1;
        const name = pressing(combination);
        const factor = chosen.has(name) ? (factors.get(name) ?? Infinity) : least;
        return factor >= firstOrder ? 1 : amplifier(factor / reserve);
      },
    };
  },
});
