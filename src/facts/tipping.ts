import type { OrientedBox } from "../geometry/box.ts";
import type { Vec2, Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { acting, GRAVITY } from "./acting.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { type Foothold, footing } from "./footing.ts";
import { masses } from "./mass.ts";
import { panelBoxes } from "./panel-boxes.ts";
import { structure } from "./structure.ts";
import { type TippingEdge, tippingEdges } from "./tipping-edges.ts";
import { type TippingState, worstState } from "./tipping-state.ts";
import { type Weighing, weigh } from "./weighing.ts";

/** The line between two feet over which a frame tips. */
export interface TippingLine {
  readonly feet: readonly [Ref, Ref];
  /** Its ends, on the floor, and the level way into the frame square to it. */
  readonly pivot: Vec3;
  readonly far: Vec3;
  readonly inward: Vec3;
}

/** How the frame stands when it is nearest to tipping over one such line. */
export interface Tipping extends TippingLine, TippingState {
  /** Load cases that always act, by name, and whether equipment is bolted down. */
  readonly permanent: readonly string[];
  readonly equipped: boolean;
  /** How far an uneven floor leans it over the line, rad. */
  readonly lean: number;
}

export interface PushTest {
  /** N, at most, and as a share of the weight. */
  readonly force: number;
  readonly share: number;
  /** Height over the floor at which it pushes, m. */
  readonly height: number;
}

export type Stability =
  | { readonly kind: "lacking"; readonly why: string }
  | { readonly kind: "cannot tip"; readonly why: string }
  | {
      readonly kind: "stands";
      /** Height over the floor of the highest bar, panel or box of equipment bolted down, m. */
      readonly top: number;
      /** The lines it may tip over. */
      readonly lines: readonly TippingLine[];
      /** The state of loads and doors with the least tilt to tipping. */
      tilted(): Tipping;
      /** The state in which a push comes nearest to tipping it. */
      pushed(test: PushTest): Tipping;
    };

/** Rounds of the search for the worst set of loads: each round is better than the last, and few are needed. */
const ROUNDS = 50;

const lineOf = ({ feet, from, to, inward }: TippingEdge, floor: number): TippingLine => ({
  feet,
  pivot: [...from, floor],
  far: [...to, floor],
  inward: [...inward, 0],
});

/** The worst state of loads and doors for a cost that is linear in the place, over one line. */
function worstOver(weighing: Weighing, edge: TippingEdge, cost: (inside: number, height: number) => number): Tipping {
  const { permanent, equipped, floor, uneven } = weighing;
  const state = worstState(weighing, edge, cost);
  return { ...lineOf(edge, floor), permanent, equipped, ...state, lean: Math.atan2(uneven, edge.nearest) };
}

/** Least ratio of inside to height over all states of loads and doors (Dinkelbach 1967: a ratio as a row of linear problems). */
function leastTilt(weighing: Weighing, edge: TippingEdge): Tipping {
  let state = worstOver(weighing, edge, (inside) => inside);
  for (let round = 0; round < ROUNDS; round += 1) {
    const ratio = state.inside / state.height;
    const next = worstOver(weighing, edge, (inside, height) => inside - ratio * height);
    if (!(next.inside / next.height < ratio - 1e-12)) break;
    state = next;
  }
  return state;
}

/** Push over the push that tips: 1 tips. Infinity where the centre of mass lies outside. */
export function pushRatio({ mass, inside }: Tipping, test: PushTest): number {
  const weight = mass * GRAVITY;
  return inside > 0 ? (Math.min(test.force, test.share * weight) * test.height) / (weight * inside) : Infinity;
}

/** The worst state for a push: an item hurts by its own moment, or by the share of its weight that the push grows with. */
function worstPush(weighing: Weighing, edge: TippingEdge, test: PushTest): Tipping {
  const states = [0, test.share * test.height].map((worth) => worstOver(weighing, edge, (inside) => inside - worth));
  return states.reduce((a, b) => (pushRatio(b, test) > pushRatio(a, test) ? b : a));
}

/** Tilt of a level floor at which it tips, rad: what its centre of mass allows less what it leans already. */
export const tiltOf = ({ inside, height, lean }: Tipping): number => Math.atan2(inside, height) - lean;

const flat = ({ at }: Foothold): Vec2 => [at[0], at[1]];

const boxTop = ({ centre, axes, half }: OrientedBox): number =>
  axes.reduce((high, axis, i) => high + Math.abs(axis[2]) * (half[i as 0 | 1 | 2] ?? 0), centre[2]);

/** How near the frame is to tipping, from its weights alone: rigid, on feet that push and, unless anchored, do not pull. */
export const tipping = defineFact<
  Stability,
  {
    masses: typeof masses;
    footing: typeof footing;
    acting: typeof acting;
    structure: typeof structure;
    bodies: typeof bodies;
    boxes: typeof panelBoxes;
  }
>({
  id: "tipping",
  needs: { masses, footing, acting, structure, bodies, boxes: panelBoxes },
  compute({ masses: all, footing: feet, acting: loads, structure: known, bodies: bars, boxes }, frame) {
    if (feet.length === 0)
      return { kind: "lacking", why: "what the frame stands on: give it feet, casters, or bars down to the floor" };
    const anchored = feet.filter((foot) => foot.hold === "anchored").map(flat);
    const edges = tippingEdges(feet, frame.stands).filter(
      (edge) => !anchored.some((at) => edge.inside([at[0], at[1], 0]) > 1e-3),
    );
    if (edges.length === 0)
      return anchored.length > 0
        ? { kind: "cannot tip", why: "anchored to the floor" }
        : { kind: "cannot tip", why: "its feet span no area; frame.loose says so" };
    const weighing = weigh(frame, all, loads.cases, known);
    const tops = [
      ...[...bars.values()].map((body) => body.bounds.max[2]),
      ...[...boxes.values()].flatMap(({ box }) => (box ? [boxTop(box)] : [])),
      // What is not bolted down slides off or is held before it takes the frame with it.
      ...frame.masses.flatMap(({ fixed, box, centre }) => (fixed && box ? [centre[2] + box[2] / 2] : [])),
    ];
    const top = tops.reduce((high, at) => Math.max(high, at - frame.floor.z), 0);
    const worst = (states: readonly Tipping[], nearer: (a: Tipping, b: Tipping) => boolean): Tipping =>
      states.reduce((a, b) => (nearer(b, a) ? b : a));
    return {
      kind: "stands",
      top,
      lines: edges.map((edge) => lineOf(edge, frame.floor.z)),
      tilted: () =>
        worst(
          edges.map((edge) => leastTilt(weighing, edge)),
          (a, b) => tiltOf(a) < tiltOf(b),
        ),
      pushed: (test) =>
        worst(
          edges.map((edge) => worstPush(weighing, edge, test)),
          (a, b) => pushRatio(a, test) > pushRatio(b, test),
        ),
    };
  },
});
