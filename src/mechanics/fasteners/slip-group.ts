import type { Vec2 } from "../../geometry/vector.ts";
import { denseFactor, denseSolve } from "../dense.ts";
import type { GroupLoad } from "./elastic-group.ts";

/** A clamped fastener: it slides at force `slip` in any direction, and turns in place at torque `torque`. */
export interface SlippingFastener {
  readonly at: Vec2;
  /** N. */
  readonly slip: number;
  /** N·m, of the ring under its head; zero when absent. */
  readonly torque?: number;
}

/** How a group gives way: about a point, or straight on when the point is infinitely far. */
export interface GroupSlip {
  /** Load factor at which it gives way: `lower` is a factor that is held for certain, `upper` one that is not. */
  readonly lower: number;
  readonly upper: number;
  /** Instantaneous centre; absent for a straight slide. */
  readonly centre?: Vec2;
}

/** The bounds meet to this fraction, or the steps are used up; both bounds are true whenever it stops. */
const BOUNDS_MEET = 1e-9;
const MOST_STEPS = 2000;
/** Turning less than this times the slide (radians per group size) is a straight slide. */
const STRAIGHT = 1e-9;

/** A fastener in lengths of the group's size about its middle; torque as a force at that size. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly slip: number;
  readonly torque: number;
}

const slide = (motion: Float64Array, { x, y }: Place): number =>
  Math.hypot(at(motion, 0) - at(motion, 2) * y, at(motion, 1) + at(motion, 2) * x);

/** Friction over speed at each fastener and at its turning: the weights of the next least squares. */
function weightsFor(places: readonly Place[], motion: Float64Array) {
  const still = SMOOTHING * Math.hypot(...motion);
  const turn = Math.max(Math.abs(at(motion, 2)), still);
  return places.map((place) => ({
    slide: place.slip / Math.max(slide(motion, place), still),
    turn: place.torque / turn,
  }));
}

type Weights = ReturnType<typeof weightsFor>;

/** The motion that the load drives against dampers of these weights. */
function drivenMotion(places: readonly Place[], weights: Weights, work: Float64Array): Float64Array {
  const matrix = new Float64Array(9);
  places.forEach(({ x, y }, i) => {
    const { slide: w = 0, turn = 0 } = weights[i] ?? {};
    addTo(matrix, [w, 0, -w * y, 0, w, w * x, -w * y, w * x, w * (x * x + y * y) + turn]);
  });
  const floor = FLOOR * Math.max(at(matrix, 0), at(matrix, 8));
  addTo(matrix, [floor, 0, 0, 0, floor, 0, 0, 0, floor]);
  return denseSolve(denseFactor(matrix, 3), work);
}

/** How far the damper forces exceed the friction they stand for; they balance the load, so load / excess is held. */
function excess(places: readonly Place[], weights: Weights, motion: Float64Array): number {
  let over = 0;
  places.forEach((place, i) => {
    const { slide: w = 0, turn = 0 } = weights[i] ?? {};
    if (place.slip > 0) over = Math.max(over, (w * slide(motion, place)) / place.slip);
    if (place.torque > 0) over = Math.max(over, (turn * Math.abs(at(motion, 2))) / place.torque);
  });
  return over;
}

/**
 * Largest factor of a load that friction in a group of fasteners holds, each at its own limit: the instantaneous centre
 * found by the theorems of limit analysis (Drucker, Prager and Greenberg 1952). A motion (vx, vy, ω) on which the load
 * does unit work dissipates Σ slipᵢ |vᵢ| + torqueᵢ |ω|, an upper bound; the smallest is the answer. Minimised by
 * reweighted least squares (Weiszfeld 1937), whose forces, scaled to their limits, give the lower bound.
 * With few steps the bounds lie further apart. Throws RangeError when the load is zero or nothing resists.
 */
export function slipOfGroup(fasteners: readonly SlippingFastener[], load: GroupLoad, steps = MOST_STEPS): GroupSlip {
  const { origin, size } = extent(fasteners);
  const moment =
    (load.moment ?? 0) + (load.at[0] - origin[0]) * load.force[1] - (load.at[1] - origin[1]) * load.force[0];
  const work = Float64Array.of(load.force[0], load.force[1], moment / size);
  if (!work.some((part) => part !== 0)) throw new RangeError("a group without load does not slip");
  if (!fasteners.some(({ slip }) => slip > 0)) throw new RangeError("a group without friction holds nothing");
  const places = fasteners.map(({ at: [x, y], slip, torque = 0 }): Place => {
    return { x: (x - origin[0]) / size, y: (y - origin[1]) / size, slip, torque: torque / size };
  });
  let motion = scaledToUnitWork(work, work);
  let best = motion;
  let [lower, upper] = [0, Infinity];
  for (let step = 0; step < steps && lower < (1 - BOUNDS_MEET) * upper; step++) {
    const turning = Math.abs(at(motion, 2));
    const dissipated = places.reduce((sum, p) => sum + p.slip * slide(motion, p) + p.torque * turning, 0);
    if (dissipated < upper) [upper, best] = [dissipated, motion];
    const weights = weightsFor(places, motion);
    const answer = drivenMotion(places, weights, work);
    const over = excess(places, weights, answer);
    if (over > 0) lower = Math.max(lower, 1 / over);
    motion = scaledToUnitWork(answer, work);
  }
  lower = Math.min(lower, upper); // past the last digit the two may cross
  const [vx, vy, turn] = [at(best, 0), at(best, 1), at(best, 2)];
  if (Math.abs(turn) <= STRAIGHT * Math.hypot(vx, vy)) return { lower, upper };
  return { lower, upper, centre: [origin[0] - (size * vy) / turn, origin[1] + (size * vx) / turn] };
}

function scaledToUnitWork(motion: Float64Array, work: Float64Array): Float64Array {
  const done = motion.reduce((sum, part, i) => sum + part * at(work, i), 0);
  return motion.map((part) => part / done);
}

/** A fastener that stands still has no weight of its own; the limits below keep the equations regular. */
const SMOOTHING = 1e-10;
const FLOOR = 1e-15;

const at = (values: Float64Array, i: number): number => values[i] as number;

function addTo(matrix: Float64Array, values: readonly number[]): void {
  values.forEach((value, i) => {
    matrix[i] = at(matrix, i) + value;
  });
}

function extent(fasteners: readonly SlippingFastener[]): { readonly origin: Vec2; readonly size: number } {
  const n = fasteners.length || 1;
  const x = fasteners.reduce((sum, f) => sum + f.at[0], 0) / n;
  const y = fasteners.reduce((sum, f) => sum + f.at[1], 0) / n;
  const size = fasteners.reduce((most, f) => Math.max(most, Math.hypot(f.at[0] - x, f.at[1] - y)), 0);
  const byTorque = fasteners.reduce((most, f) => Math.max(most, f.slip > 0 ? (f.torque ?? 0) / f.slip : 0), 0);
  return { origin: [x, y], size: size || byTorque || 1 };
}

/**
 * Lever of the friction under a ring of diameters `outer` and `inner` that turns about its own axis, pressure uniform:
 * (do³ − di³)/(3 (do² − di²)).
 */
export const frictionRadius = (outer: number, inner: number): number =>
  (outer ** 3 - inner ** 3) / (3 * (outer ** 2 - inner ** 2));
