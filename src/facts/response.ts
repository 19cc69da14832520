import { type Frame as Prepared, prepareFrame } from "../mechanics/frame.ts";
import type { Deflections, InternalForces } from "../mechanics/member/fields.ts";
import { concatenate, type Piecewise } from "../mechanics/piecewise.ts";
import { memberDeflections, memberForces, solvedState } from "../mechanics/results.ts";
import type { Buckling } from "../mechanics/stability/buckling.ts";
import type { Solution } from "../mechanics/statics/solve.ts";
import { bodies } from "./bodies.ts";
import { type Combined, combinations, resultantOf } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { fastenedSheets } from "./fastened-sheets.ts";
import { frictionUnder } from "./floor-friction.ts";
import { type Foothold, footing } from "./footing.ts";
import { reactionAt, type Wrench } from "./free-body.ts";
import { giving, type Racked } from "./giving-sheets.ts";
import { type Bound, bounds } from "./joint-stiffness.ts";
import { loadFactors } from "./load-factors.ts";
import { type LooseMotion, namedMotions } from "./loose-motion.ts";
import { type Rest, restsOf } from "./rests.ts";
import { type SheetBrace, sheetBraces } from "./sheet-braces.ts";
import { hasPulledOut } from "./slides.ts";
import { type Feet, solverModel } from "./solver-model.ts";
import { structure } from "./structure.ts";

/** One combination with one joint stiffness: what bars, joints and feet then bear. */
export interface View {
  readonly combination: Combined;
  readonly bound: Bound;
  /** Along the bar, stations from its cut from end, m; local axes. */
  forces(bar: string): InternalForces | undefined;
  deflections(bar: string): Deflections | undefined;
  /** Force [N] and moment [N·m] that link `i` of the structure puts on the bar that ends there, along and about `linkAxes`. */
  link(i: number): readonly [number, number, number, number, number, number];
  /** Push of foothold `i` on the frame, N. */
  foot(i: number): number;
  /** Force and moment of the floor on the frame at foothold `i`, global. */
  reaction(i: number): Wrench;
  /** Displacement of a node of the structure, global, m. */
  moved(node: number): readonly [number, number, number];
  /** The first way in which the frame buckles as a whole; undefined where nothing is pressed. Costs an eigenvalue problem. */
  buckling(): BucklingMode | undefined;
  /** That way and the next ones, the least factor first; fewer where there are no more. Costs another eigenvalue problem. */
  bucklingModes(count: number): readonly BucklingMode[];
  /** Whether the frame as a whole can bear its axial forces grown by this factor. Costs a factorisation. */
  stands(factor: number): boolean;
}

/** How a frame buckles. */
export interface BucklingMode {
  /** By this factor all axial forces may grow before it does (α_cr). */
  readonly factor: number;
  /** Displacement of a node of the structure, the largest of them 1. */
  moved(node: number): readonly [number, number, number];
  /** Of a piece of the structure, at the ends of equal parts of it: three displacements and three rotations [rad] each, its start first. */
  along(piece: number): Float64Array;
}

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
      /** The screwed sheets that brace it with such joints: those whose screws do not give to what pushes it sideways. */
      braces(bound: Bound): readonly SheetBrace[];
      /** Declared loads, in words, under which the frame lifts off its feet before it slides. */
      readonly lifted: readonly string[];
      /** All declared loads that may act together, where they would lift it, did they not push it along the floor first; so they are left out. */
      readonly slid: readonly Slid[];
    }
  | { readonly kind: "loose"; readonly motions: readonly LooseMotion[] }
  | { readonly kind: "lacking"; readonly why: string };

const INTERNAL = ["N", "Vy", "Vz", "T", "My", "Mz"] as const;
const MOVED = ["x", "y", "z", "turnX", "turnY", "turnZ"] as const;

function joined<K extends string>(
  names: readonly K[],
  parts: readonly Readonly<Record<K, Piecewise>>[],
): Record<K, Piecewise> {
  const made: Partial<Record<K, Piecewise>> = {};
  for (const name of names) {
    const whole = concatenate(parts.map((part) => part[name]));
    // Stations run from the cut end, whatever the first member's own zero.
    const start = whole.breaks[0] ?? 0;
    made[name] = start === 0 ? whole : { ...whole, breaks: whole.breaks.map((b) => b - start) };
  }
  return made as Record<K, Piecewise>;
}

function translation(u: Float64Array, node: number): readonly [number, number, number] {
  return [u[6 * node] ?? 0, u[6 * node + 1] ?? 0, u[6 * node + 2] ?? 0];
}

/** @throws Error where the contacts of a solved state leave a mechanism: then the solver contradicts itself. */
function modesOf(whole: Buckling, index: number, count: number): readonly BucklingMode[] {
  const found = whole.modes(index, count);
  if (found.kind === "mechanism") throw new Error("a frame in equilibrium was found free to move");
  return found.modes.map(({ lambda, displacements, alongMember }) => ({
    factor: lambda,
    moved: (node) => translation(displacements, node),
    along: alongMember,
  }));
}

function viewOf(
  solution: Solution,
  whole: Buckling,
  index: number,
  combination: Combined,
  bound: Bound,
  piecesOf: (bar: string) => readonly number[],
  feet: readonly Foothold[],
  contactOf: readonly (number | undefined)[],
): View {
  const forces = new Map<string, InternalForces | undefined>();
  const deflected = new Map<string, Deflections | undefined>();
  const state = solvedState(solution, index);
  let mode: { readonly is: BucklingMode | undefined } | undefined;
  return {
    combination,
    bound,
    forces(bar) {
      if (!forces.has(bar)) {
        const parts = piecesOf(bar).map((piece) => memberForces(solution, index, piece));
        forces.set(bar, parts.length === 0 ? undefined : joined(INTERNAL, parts));
      }
      return forces.get(bar);
    },
    deflections(bar) {
      if (!deflected.has(bar)) {
        const parts = piecesOf(bar).map((piece) => memberDeflections(solution, index, piece));
        deflected.set(bar, parts.length === 0 ? undefined : joined(MOVED, parts));
      }
      return deflected.get(bar);
    },
    link(i) {
      const at = 6 * i;
      const s = state.springs;
      return [s[at] ?? 0, s[at + 1] ?? 0, s[at + 2] ?? 0, s[at + 3] ?? 0, s[at + 4] ?? 0, s[at + 5] ?? 0];
    },
    foot(i) {
      const contact = contactOf[i];
      return contact === undefined ? 0 : (state.contacts[contact]?.push ?? 0);
    },
    reaction(i) {
      const foot = feet[i];
      if (!foot) throw new RangeError(`foothold ${i} does not exist`);
      return reactionAt(solution, state, foot);
    },
    moved(node) {
      return translation(state.displacements, node);
    },
    buckling() {
      mode ??= { is: modesOf(whole, index, 1)[0] };
      return mode.is;
    },
    bucklingModes: (count) => modesOf(whole, index, count),
    stands(factor) {
      return mode ? (mode.is?.factor ?? Infinity) > factor : whole.stands(index, factor);
    },
  };
}

/** The frame with one stiffness of joints, under every combination. */
type Solved = Extract<Response, { kind: "loose" | "lacking" }> | BoundViews;
interface BoundViews {
  readonly kind: "views";
  readonly views: readonly View[];
  readonly lifted: readonly string[];
  readonly slid: readonly Slid[];
  /** Sheets that what pushes sideways presses beyond what they bear. */
  readonly given: ReadonlySet<SheetBrace>;
}

/** How the feet hold: how stiff a frame feels is asked of one whose feet stay where they are. */
const standingOf = ({ kind, sideways }: Combined): Feet => (kind === "sway" ? "pinned" : sideways ? "held" : "free");

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
    let contact = 0;
    const contactOf = feet.map((foot) => (foot.hold === "anchored" ? undefined : contact++));
    let like: Prepared | undefined;
    const solved = (bound: Bound, braces: readonly SheetBrace[]): Solved => {
      const views: View[] = [];
      const lifted: string[] = [];
      const slid: Slid[] = [];
      const racked: Racked[] = [];
      for (const way of ["free", "held", "pinned"] as const satisfies readonly Feet[]) {
        const wanted = combined.all.filter((c) => standingOf(c) === way);
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
            views.push(viewOf(solution, whole, index, combination, bound, known.piecesOf, feet, contactOf));
            if (combination.sideways) racked.push({ combination, couplings: state.couplings });
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
      return { kind: "views", views, lifted, slid, given: giving(braces, racked, by.reserve) };
    };
    const views: View[] = [];
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
        for (const name of found.lifted) lifted.add(name);
        for (const one of found.slid) slid.set(one.loads, one);
        break;
      }
      inForce.set(bound, braces);
    }
    return {
      kind: "solved",
      views,
      braces: (bound) => inForce.get(bound) ?? [],
      lifted: [...lifted].sort(),
      slid: [...slid.values()],
    };
  },
});
