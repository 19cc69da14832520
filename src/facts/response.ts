import { type Frame as Prepared, prepareFrame } from "../mechanics/frame.ts";
import { bodies } from "./bodies.ts";
import { type Combined, combinations, resultantOf } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { fastenedSheets } from "./fastened-sheets.ts";
import { frictionUnder } from "./floor-friction.ts";
import { footing } from "./footing.ts";
import { giving, type Racked } from "./giving-sheets.ts";
import { type Bound, bounds } from "./joint-stiffness.ts";
import { loadFactors } from "./load-factors.ts";
import { type LooseMotion, namedMotions } from "./loose-motion.ts";
import { type Rest, restsOf } from "./rests.ts";
import { type SheetBrace, sheetBraces } from "./sheet-braces.ts";
import { hasPulledOut } from "./slides.ts";
import { contactsOf, type Feet, solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";
import { type View, viewOf } from "./view.ts";

export type { BucklingMode, View } from "./view.ts";

/** Loads that push the frame along the floor harder than friction holds it: N, sideways, and what friction holds. */
export interface Slid {
  readonly loads: string;
  readonly push: number;
  readonly holds: number;
}

/** What the frame does under its loads; or why that cannot be said. */
export type Response =
  | {
      readonly kind: "solved";
      readonly views: readonly View[];
      /**
       * On an uneven floor with feet held by friction, typical joints: how the frame as a whole stands there. What bars and joints bear
       * there is in `views`, the feet sliding.
       */
      readonly oddlyHeld: readonly View[];
      /** The screwed sheets that brace it with such joints: those whose screws do not give to what pushes it sideways. */
      braces(bound: Bound): readonly SheetBrace[];
      /** Declared loads, in words, under which the frame lifts off its feet before it slides. */
      readonly lifted: readonly string[];
      /** All declared loads that may act together, where they would lift it, did they not push it along the floor first; so they are left out. */
      readonly slid: readonly Slid[];
    }
  | { readonly kind: "loose"; readonly motions: readonly LooseMotion[] }
  | { readonly kind: "lacking"; readonly why: string };

/** The frame with one stiffness of joints, under every combination. */
type Solved = Extract<Response, { kind: "loose" | "lacking" }> | BoundViews;
interface BoundViews {
  readonly kind: "views";
  readonly views: readonly View[];
  readonly oddlyHeld: readonly View[];
  readonly lifted: readonly string[];
  readonly slid: readonly Slid[];
  /** Sheets that what pushes sideways presses beyond what they bear. */
  readonly given: ReadonlySet<SheetBrace>;
}

/** How the feet hold: how stiff a frame feels is asked of one whose feet stay where they are. */
export const standingOf = ({ kind, sideways }: Combined): Feet =>
  kind === "sway" ? "pinned" : sideways ? "held" : "free";

/** Whether nothing else acts that may act as well: who leans on an empty bench moves it, which says little. */
const isFullest = ({ acts }: Combined, all: readonly Combined[]): boolean =>
  !all.some(
    (one) => one.kind === "service" && one.acts.length > acts.length && acts.every((act) => one.acts.includes(act)),
  );

/**
 * Statics of the whole frame for soft, typical and stiff joints, every combination, checked by the solver itself. A sheet
 * whose screws would give braces nothing: the frame is solved again without it.
 */
export const response = defineFact<
  Response,
  {
    structure: typeof structure;
    bodies: typeof bodies;
    combinations: typeof combinations;
    footing: typeof footing;
    fastened: typeof fastenedSheets;
    by: typeof loadFactors;
  }
>({
  id: "response",
  needs: { structure, bodies, combinations, footing, fastened: fastenedSheets, by: loadFactors },
  compute({ structure: known, bodies: all, combinations: combined, footing: feet, fastened, by }, frame) {
    if (feet.length === 0)
      return { kind: "lacking", why: "what the frame stands on: give it feet, casters, or bars down to the floor" };
    // What rolls is there to be pushed.
    const stands = feet.every(({ hold }) => hold !== "rolling");
    const anchored = feet.some(({ hold }) => hold === "anchored");
    const contactOf = contactsOf(feet);
    let like: Prepared | undefined;
    const solved = (bound: Bound, braces: readonly SheetBrace[]): Solved => {
      const views: View[] = [];
      const oddlyHeld: View[] = [];
      const lifted: string[] = [];
      const slid: Slid[] = [];
      const racked: Racked[] = [];
      for (const way of ["free", "held", "pinned"] as const satisfies readonly Feet[]) {
        const oddly = ({ gaps, sideways }: Combined): boolean =>
          way === "held" && bound === "typical" && gaps !== undefined && !sideways;
        const wanted = combined.all.filter((c) => standingOf(c) === way || oddly(c));
        if (wanted.length === 0) continue;
        const model = (hold: Feet) => solverModel(known, all, feet, frame.stock, bound, hold, braces);
        const prepared: Prepared = prepareFrame(model(way), like);
        like = prepared;
        if (prepared.mechanisms.length > 0) return { kind: "loose", motions: namedMotions(prepared.mechanisms, known) };
        const pinned = (): Prepared => prepareFrame(model("pinned"), prepared);
        const answers = restsOf(prepared, pinned, combined.cases, wanted, ({ factors }) =>
          frictionUnder(resultantOf(combined.cases, factors), frame.floor.friction, anchored),
        );
        for (const [c, combination] of wanted.entries()) {
          const { solution, whole, index } = answers[c] as Rest;
          const state = solution.states[index];
          if (state?.kind === "solved") {
            const view = viewOf(solution, whole, index, combination, bound, known.piecesOf, feet, contactOf);
            (oddly(combination) ? oddlyHeld : views).push(view);
            if (combination.sideways) racked.push({ view, couplings: state.couplings });
          }
          // Over a hollow, or with a heavy drawer out and factors on it, it may tip before it rests: frame.tips judges that, from weights.
          else if (combination.gaps || hasPulledOut(combination.acts)) continue;
          // A light frame that a leaning person lifts off its feet tips before it bends: frame.tips judges that, from weights.
          else if (!combination.sideways || state?.kind === "unsettled") {
            const what = state?.kind === "unsettled" ? "no state of rest was found" : "the frame lifts off its feet";
            return { kind: "lacking", why: `how it stands: under ${combination.name} ${what}` };
          } else if (combination.kind === "service") {
            const [x, y, z] = resultantOf(combined.cases, combination.factors);
            const [push, holds] = [Math.hypot(x, y), frame.floor.friction * Math.abs(z)];
            if (push <= holds) lifted.push(combination.name);
            else if (stands && isFullest(combination, combined.all))
              slid.push({ loads: combination.name, push, holds });
          }
        }
      }
      return { kind: "views", views, oddlyHeld, lifted, slid, given: giving(braces, racked, by.reserve) };
    };
    const views: View[] = [];
    const oddlyHeld: View[] = [];
    const lifted = new Set<string>();
    const slid = new Map<string, Slid>();
    const inForce = new Map<Bound, readonly SheetBrace[]>();
    for (const bound of bounds) {
      let braces: readonly SheetBrace[] = sheetBraces(fastened, known, bound);
      for (;;) {
        const found = solved(bound, braces);
        if (found.kind !== "views") return found;
        const { given } = found;
        if (given.size > 0) {
          braces = braces.filter((brace) => !given.has(brace));
          continue;
        }
        views.push(...found.views);
        oddlyHeld.push(...found.oddlyHeld);
        for (const name of found.lifted) lifted.add(name);
        for (const one of found.slid) slid.set(one.loads, one);
        break;
      }
      inForce.set(bound, braces);
    }
    return {
      kind: "solved",
      views,
      oddlyHeld,
      braces: (bound) => inForce.get(bound) ?? [],
      lifted: [...lifted].sort(),
      slid: [...slid.values()],
    };
  },
});
