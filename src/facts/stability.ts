import { amplifier } from "../mechanics/design/second-order.ts";
import type { Combined } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { fallingViews } from "./falling-views.ts";
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
   * is 10 or more, 1/(1 − 1/α_cr) below, Infinity at 1, α_cr being taken for loads that hold the whole reserve. For combinations
   * without an eigenvalue of their own the least one counts, that on an uneven floor for those on one.
   */
  amplification(combination: Combined): number;
}

/** EN 1993-1-1:2005 and EN 1999-1-1:2007, 5.2.1: from this α_cr on a first-order analysis will do. */
const FIRST_ORDER = 10;
/** Factors this close are the same: of mirrored combinations the first one counts. */
const SAME = 1e-6;
/** Combinations looked at first, for each of two measures, total weight and the hardest pressed foot. */
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

/** Views that differ in nothing but which way the frame leans. */
function alikeBut(views: readonly View[]): ReadonlyMap<string, readonly View[]> {
  const alike = new Map<string, View[]>();
  for (const view of views) {
    const name = pressing(view.combination);
    const group = alike.get(name);
    if (group) group.push(view);
    else alike.set(name, [view]);
  }
  return alike;
}

/** The least factor of some views. */
type Least = Stability["governing"];
const factorOf = (least: Least): number => least?.mode.factor ?? Infinity;

/** The least factor of `known` and the views: those that buckle below it, each looked at, all others cleared together. */
function leastOf(views: readonly View[], known: Least): Least {
  let least = known;
  for (const view of known ? fallingViews(views, known.mode.factor * (1 - SAME)) : views) {
    if (least && view.stands(least.mode.factor * (1 - SAME))) continue;
    const mode = view.buckling();
    if (mode && mode.factor < factorOf(least)) least = { view, mode };
  }
  return least;
}

/**
 * Stability of the whole frame under every strength combination that leans, is leant on or stands on an uneven floor, with its feet
 * held by friction where they press: a buckling analysis of those that press it most (Timoshenko and Gere, ch. 2), bars cut finely
 * enough that those which bow by themselves are found too, and of all others that do not stand at the least factor of these.
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
    const pushed = views.filter(
      ({ combination: c, bound }) => c.kind === "strength" && c.sideways && bound === "typical",
    );
    const even = pushed.filter(({ combination }) => !combination.gaps);
    // A foot in the air holds nothing: on an uneven floor fewer legs bear the same weight.
    const uneven = [
      ...pushed.filter(({ combination }) => combination.gaps),
      ...(found.kind === "solved" ? found.oddlyHeld : []),
    ];
    // The four ways out of plumb press nearly alike, but which feet hold differs: all of them are looked at.
    const alike = alikeBut(even);
    // Reactions rather than pushes of contact: an anchored foot presses as well.
    const pushes = new Map(even.map((view) => [view, feet.map((_, i) => Math.max(0, view.reaction(i).force[2]))]));
    const total = (view: View): number => (pushes.get(view) ?? []).reduce((sum, push) => sum + push, 0);
    const most = (view: View): number => (pushes.get(view) ?? []).reduce((a, b) => Math.max(a, b), 0);
    const chosen = new Set([...heaviest(alike, total), ...heaviest(alike, most)]);
    const factors = new Map<string, number>();
    let heaviestOnes: Least;
    for (const name of chosen)
      for (const view of alike.get(name) ?? []) {
        const own = factors.get(name) ?? Infinity;
        // What neither governs nor falls below where first-order analysis does need not be known more closely.
        const matters = Math.max(factorOf(heaviestOnes), Math.min(own, firstOrder));
        if (matters < Infinity && view.stands(matters * (1 - SAME))) continue;
        const mode = view.buckling();
        factors.set(name, Math.min(own, mode?.factor ?? Infinity));
        if (mode && mode.factor < factorOf(heaviestOnes)) heaviestOnes = { view, mode };
      }
    const onEven = leastOf(
      even.filter(({ combination }) => !chosen.has(pressing(combination))),
      heaviestOnes,
    );
    const governing = leastOf(uneven, onEven);
    const others = new Map<Bound, number>();
    for (const view of views) {
      if (!governing || view.bound === "typical" || view.combination !== governing.view.combination) continue;
      // Views of it with other joints have their feet sliding.
      if (!governing.view.combination.sideways) continue;
      others.set(view.bound, view.buckling()?.factor ?? Infinity);
    }
    return {
      governing,
      others,
      amplification: (combination) => {
        if (combination.kind !== "strength") return 1;
        const name = pressing(combination);
        const own = chosen.has(name) ? (factors.get(name) ?? Infinity) : factorOf(onEven);
        const factor = combination.gaps ? factorOf(governing) : own;
        return factor >= firstOrder ? 1 : amplifier(factor / reserve);
      },
    };
  },
});
