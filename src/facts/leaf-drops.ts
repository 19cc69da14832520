import { boundsOverlap } from "../geometry/bounds.ts";
import { fallUntilMet } from "../geometry/fall.ts";
import { prismBounds } from "../geometry/prism.ts";
import { turned } from "../geometry/turning-body.ts";
import { add, cross, dot, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import { type Frame as Prepared, prepareFrame } from "../mechanics/frame.ts";
import { solvedState } from "../mechanics/results.ts";
import { solveFrame } from "../mechanics/statics/solve.ts";
import type { Door } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import { acting } from "./acting.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { fastenedSheets } from "./fastened-sheets.ts";
import { footing } from "./footing.ts";
import { barRiders, type HungLeaf, hungLeaf, leafWeight, outFrom, type Rider } from "./hung-leaves.ts";
import { type Bound, bounds } from "./joint-stiffness.ts";
import {
  leavesOf,
  placedBy,
  type Turn,
  turnedBars,
  turnedCouplings,
  turnedSprings,
  unlatched,
} from "./opened-model.ts";
import { response } from "./response.ts";
import { sheetBraces } from "./sheet-braces.ts";
import { solverModel } from "./solver-model.ts";
import { type Structure, structure } from "./structure.ts";
import { type SwingingParts, swingingParts, TOUCHING } from "./swinging-parts.ts";
import { whyNotSolved } from "./why-not-solved.ts";

/** How far a door stands open. */
export type Opening = "shut" | "half open" | "wide open";

/** Something of the door above something that stands. */
export interface Below {
  readonly by: Ref;
  /** Undefined: the floor. */
  readonly on: Ref | undefined;
  /** Room between them as drawn, m. */
  readonly gap: number;
  /** How far that part of the door comes down, m. */
  readonly drops: Readonly<Record<Bound, number>>;
}

export interface LeafState {
  readonly opening: Opening;
  /** The corner that comes down farthest, along the hinge line, m. */
  readonly drops: Readonly<Record<Bound, number>>;
  readonly below: readonly Below[];
}

/** How a door hangs; or why that is not asked of it. */
export type LeafDrop =
  | {
      readonly kind: "hangs";
      readonly door: Door;
      /** Farthest its bars reach from the hinge line, m. */
      readonly reach: number;
      readonly states: readonly LeafState[];
    }
  | { readonly kind: "held otherwise"; readonly door: Door; readonly why: string };

export type LeafDrops =
  | { readonly kind: "solved"; readonly all: readonly LeafDrop[] }
  | { readonly kind: "lacking"; readonly why: string };

/** What lies farther below a leaf than this is out of its way, m. */
const FAR_BELOW = 0.05;
const OPENINGS: readonly (readonly [Opening, number])[] = [
  ["shut", 0],
  ["half open", 0.5],
  ["wide open", 1],
];

/** Displacements of all nodes, six each, m and rad. */
type Moved = Readonly<Record<Bound, Float64Array>>;

/** How far points of a leaf come down, the one that does farthest: with its node, and by the play of the pins. */
function dropsOf(
  leaf: HungLeaf,
  riders: readonly Rider[],
  known: Structure,
  turn: Turn,
  moved: Moved,
): LeafState["drops"] {
  const drop = (u: Float64Array, rider: Rider): number => {
    const at = (i: number): Vec3 => [u[i] ?? 0, u[i + 1] ?? 0, u[i + 2] ?? 0];
    const node = known.nodes[rider.node]?.at ?? rider.point;
    const arm = subtract(placedBy(turn, rider.point), placedBy(turn, node));
    const way = add(at(6 * rider.node), cross(at(6 * rider.node + 3), arm));
    return leaf.tilt * outFrom(leaf, rider) - dot(way, leaf.axis);
  };
  const most = (u: Float64Array): number => riders.reduce((worst, rider) => Math.max(worst, drop(u, rider)), -Infinity);
  return { soft: most(moved.soft), typical: most(moved.typical), stiff: most(moved.stiff) };
}

function stateOf(
  opening: Opening,
  leaf: HungLeaf,
  known: Structure,
  turn: Turn,
  moved: Moved,
  { all, floor }: SwingingParts,
): LeafState {
  const down = scale(leaf.axis, -1);
  const standing = all.filter((part) => part.door !== leaf.door.ref.id && !part.between);
  const stands = [...standing, { of: undefined, prism: floor }].map((one) => ({
    ...one,
    bounds: prismBounds(one.prism),
  }));
  const below: Below[] = [];
  for (const { part, riders } of leaf.parts) {
    const falling = turned(part.prism, turn.pin, turn.angle);
    const bounds = prismBounds(falling);
    for (const { of, prism, bounds: other } of stands) {
      if (!boundsOverlap(bounds, other, FAR_BELOW)) continue;
      const gap = fallUntilMet(falling, prism, down, FAR_BELOW, TOUCHING);
      if (gap === undefined) continue;
      below.push({ by: part.of, on: of, gap, drops: dropsOf(leaf, riders, known, turn, moved) });
    }
  }
  return { opening, drops: dropsOf(leaf, barRiders(leaf), known, turn, moved), below };
}

/**
 * How far the leaf of each door comes down under its own weight on its hinges alone, its latch open: shut, half open and wide open, with soft,
 * typical and stiff joints; and what lies below it (docs/method/panels.md).
 */
export const leafDrops = defineFact<
  LeafDrops,
  {
    structure: typeof structure;
    bodies: typeof bodies;
    footing: typeof footing;
    acting: typeof acting;
    response: typeof response;
    parts: typeof swingingParts;
    fastened: typeof fastenedSheets;
  }
>({
  id: "leaf-drops",
  needs: { structure, bodies, footing, acting, response, parts: swingingParts, fastened: fastenedSheets },
  compute({ structure: whole, bodies: all, footing: feet, acting: loads, response: found, parts, fastened }, frame) {
    if (frame.doors.length === 0) return { kind: "solved", all: [] };
    if (found.kind === "loose" || feet.length === 0) return { kind: "lacking", why: whyNotSolved(found) };
    const leaves = leavesOf(frame.doors);
    const known = unlatched(whole, leaves);
    const standing = new Set(feet.map(({ node }) => known.nodes[node]?.bar ?? ""));
    const doors = frame.doors.map((door) => ({ door, leaf: hungLeaf(door, known, leaves, standing, parts.all) }));
    const hung = doors.flatMap(({ leaf }) => (typeof leaf === "string" ? [] : [leaf]));

    const pinned = feet.map((foot) => ({ ...foot, hold: "anchored" as const }));
    const things = new Set(frame.masses.map(({ ref }) => ref.id));
    const weights = loads.cases.filter(({ name }) => name === "self-weight" || things.has(name));
    const states = new Map(hung.map((leaf) => [leaf.door, [] as LeafState[]]));
    for (const [opening, share] of hung.length > 0 ? OPENINGS : []) {
      const turns = hung.map(({ door: { swing }, pin }) => ({ pin, angle: swing[0] + share * (swing[1] - swing[0]) }));
      const byDoor = new Map(hung.map(({ door }, i) => [door.ref.id, turns[i]]));
      const turnOf = (bar: string): Turn | undefined => byDoor.get(leaves.get(bar) ?? "");
      const cases = hung.map((leaf, i) => leafWeight(leaf, known, weights, turns[i]?.angle ?? 0));
      const alone = hung.map((_, i) => hung.map((_, k) => (i === k ? 1 : 0)));
      const solved = new Map<Bound, readonly Float64Array[]>();
      let bars: ReturnType<typeof turnedBars> | undefined;
      let like: Prepared | undefined;
      for (const bound of bounds) {
        const braces = sheetBraces(fastened, known, bound);
        const model = solverModel(known, all, pinned, frame.stock, bound, "held", braces);
        bars ??= turnedBars(model, known, turnOf);
        const springs = turnedSprings(model.springs ?? [], known, turnOf);
        const couplings = turnedCouplings(model.couplings ?? [], known, turnOf);
        like = prepareFrame({ ...bars, springs, couplings }, like);
        if (like.mechanisms.length > 0)
          return { kind: "lacking", why: "how its doors hang: with the latches open a part of it moves freely" };
        const solution = solveFrame(like, cases, alone);
        solved.set(
          bound,
          hung.map((_, i) => solvedState(solution, i).displacements),
        );
      }
      for (const [i, leaf] of hung.entries()) {
        const of = (bound: Bound): Float64Array => solved.get(bound)?.[i] ?? new Float64Array();
        const moved = { soft: of("soft"), typical: of("typical"), stiff: of("stiff") };
        const turn = turns[i];
        if (turn) states.get(leaf.door)?.push(stateOf(opening, leaf, known, turn, moved, parts));
      }
    }
    return {
      kind: "solved",
      all: doors.map(({ door, leaf }): LeafDrop => {
        if (typeof leaf === "string") return { kind: "held otherwise", door, why: leaf };
        return { kind: "hangs", door, reach: leaf.reach, states: states.get(door) ?? [] };
      }),
    };
  },
});
