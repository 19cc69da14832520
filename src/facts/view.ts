import type { Deflections, InternalForces } from "../mechanics/member/fields.ts";
import { concatenate, type Piecewise } from "../mechanics/piecewise.ts";
import { memberDeflections, memberForces, solvedState } from "../mechanics/results.ts";
import type { Buckling } from "../mechanics/stability/buckling.ts";
import type { Solution } from "../mechanics/statics/solve.ts";
import type { Combined } from "./combinations.ts";
import type { Foothold } from "./footing.ts";
import { reactionAt, type Wrench } from "./free-body.ts";
import type { Bound } from "./joint-stiffness.ts";

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
  /** The first way in which the frame buckles as a whole; undefined where nothing is pressed, or where it would take a thousand times the load. Costs an eigenvalue problem. */
  buckling(): BucklingMode | undefined;
  /** That way and the next ones, the least factor first; fewer where there are no more. Costs another eigenvalue problem. */
  bucklingModes(count: number): readonly BucklingMode[];
  /** Whether the frame as a whole can bear its axial forces grown by this factor. Costs a factorisation. */
  stands(factor: number): boolean;
  /** Where it stands among what was solved at once: for what is asked of many views together. */
  readonly solvedAs: { readonly whole: Buckling; readonly index: number };
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

/**
 * A frame that buckles only at more than so many times its load is not pressed at all: sway grows by a thousandth. In one that hangs the
 * little that is pressed is a remainder of what is pulled, and its factor hardly to be told from rounding.
 */
const NOT_PRESSED = 1000;

/** @throws Error where the contacts of a solved state leave a mechanism: then the solver contradicts itself. */
function modesOf(whole: Buckling, index: number, count: number): readonly BucklingMode[] {
  const found = whole.modes(index, count, NOT_PRESSED);
  if (found.kind === "mechanism") throw new Error("a frame in equilibrium was found free to move");
  return found.modes.map(({ lambda, displacements, alongMember }) => ({
    factor: lambda,
    moved: (node) => translation(displacements, node),
    along: alongMember,
  }));
}

/** The view of combination `index` of a solution; `contactOf` has the contact of each foothold. */
export function viewOf(
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
    solvedAs: { whole, index },
  };
}
