import { at } from "./at.ts";
import type { FrontPlan } from "./front-plan.ts";
import { backwardOne } from "./substitute.ts";
import type { SymmetricMatrix } from "./symmetric-matrix.ts";

/** A pivot that all but vanished. */
export interface SuspiciousPivot {
  readonly unknown: number;
  /** Pivot / |diagonal of the matrix| (the largest entry of its column where that is 0). */
  readonly ratio: number;
  /** Pivot / sum of the sizes of the energies it is the balance of, or somewhat more: rounding (about 1e-17) for a mechanism. */
  readonly balance: number;
  /** The balance is rounding: the unknown was tied to ground, and results are those of the matrix so held. */
  readonly held: boolean;
}

export interface Pivots {
  /** Pivots beyond doubt, by sign. With the suspicious ones they add up to n (inertia, by Sylvester's law). */
  readonly positive: number;
  readonly negative: number;
  /** In ascending order of the unknowns. */
  readonly suspicious: readonly SuspiciousPivot[];
}

/** Takes the pivots of a factorisation as they come. */
export interface PivotJudge {
  /** Gives the value to divide by for the pivot at a place of the order. */
  readonly take: (place: number, pivot: number) => number;
  readonly pivots: () => Pivots;
  /** The least |pivot| / |diagonal| that was let pass without a closer look. */
  readonly leastPassed: () => number;
}

/** Below this ratio a pivot is suspicious: ten of a double's sixteen digits of the diagonal cancelled. */
const SUSPICIOUS_RATIO = 1e-10;
/** Below this ratio it is found out at once whether a pivot is more than rounding. */
const DOUBTFUL_RATIO = 1e-6;
/** A pivot smaller than this share of the energies it is the balance of is rounding (measured on mechanisms: below 3e-17). */
const ROUNDING = 1e-15;

/**
 * A pivot d of unknown j is the energy vᵀ·K·v of the motion v that j = 1 forces on what was eliminated before. Its rounding
 * error is a few units of |v|ᵀ·|K|·|v| (Higham, Accuracy and Stability of Numerical Algorithms, 10.1), so a d no larger
 * than that is zero as far as anyone can tell: v costs no energy, a mechanism. The unknown is then held by a spring to
 * ground as stiff as its own diagonal, and the elimination goes on. `watched` places are looked at whatever their ratio;
 * `scale` is the pivotScale of the matrix.
 */
export function judgePivots(
  plan: FrontPlan,
  matrix: SymmetricMatrix,
  panels: Float64Array,
  scale: Float64Array,
  watched: ReadonlySet<number>,
): PivotJudge {
  const stiffest = scale.reduce((a, b) => Math.max(a, b), 0) || 1;
  const suspicious: SuspiciousPivot[] = [];
  const motion = new Float64Array(matrix.n);
  let positive = 0;
  let negative = 0;
  let leastPassed = 1;

  const take = (place: number, pivot: number): number => {
    const unknown = at(plan.unknownAt, place);
    const own = scale[unknown] as number;
    const size = Math.abs(pivot);
    const clear = own > 0 && size >= DOUBTFUL_RATIO * own && !watched.has(place);
    if (clear && size < leastPassed * own) leastPassed = size / own;
    const ratio = own > 0 ? pivot / own : 0;
    // The energies are no less than the diagonal, so a ratio that small settles it.
    const settled = clear || Math.abs(ratio) < ROUNDING;
    const balance = settled ? ratio : pivot / energies(plan, matrix, panels, place, motion);
    const held = !clear && Math.abs(balance) < ROUNDING;
    if (!held && size >= SUSPICIOUS_RATIO * own) {
      if (pivot > 0) positive++;
      else negative++;
      return pivot;
    }
    suspicious.push({ unknown, ratio, balance, held });
    return held ? own || stiffest : pivot;
  };
  const pivots = (): Pivots => ({ positive, negative, suspicious: suspicious.sort((a, b) => a.unknown - b.unknown) });
  return { take, pivots, leastPassed: () => leastPassed };
}

/**
 * |v|ᵀ·|K|·|v| for the motion v that a unit of the unknown at `place` forces, while its front is being eliminated: the
 * panel of that front is L as far as the motion needs it. `motion` is room for v; it comes and goes as zeros.
 */
function energies(
  plan: FrontPlan,
  matrix: SymmetricMatrix,
  panels: Float64Array,
  place: number,
  motion: Float64Array,
): number {
  const s = frontAt(plan, place);
  const first = at(plan.firstPlace, s);
  const columns = at(plan.firstPlace, s + 1) - first;
  const start = plan.panelStart[s] as number;
  motion[place] = 1;
  for (let i = place - first; i > 0; i--) {
    const vi = motion[first + i] as number;
    for (let k = 0; k < i; k++) {
      const l = panels[start + i * columns + k] as number;
      motion[first + k] = (motion[first + k] as number) - l * vi;
    }
  }
  const lowest = at(plan.lowest, s);
  backwardOne(plan, panels, motion, s, lowest);
  let sum = 0;
  const from = at(plan.firstPlace, lowest);
  for (let p = from; p <= place; p++) {
    const vj = Math.abs(motion[p] as number);
    if (vj === 0) continue;
    const j = at(plan.unknownAt, p);
    for (let e = at(matrix.colStart, j); e < at(matrix.colStart, j + 1); e++) {
      const i = at(matrix.rowIndex, e);
      const vi = Math.abs(motion[at(plan.placeOf, i)] as number);
      sum += (i === j ? 1 : 2) * Math.abs(matrix.value[e] as number) * vi * vj;
    }
  }
  motion.fill(0, from, place + 1);
  return sum;
}

function frontAt(plan: FrontPlan, place: number): number {
  let low = 0;
  let high = plan.fronts - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if (at(plan.firstPlace, middle) <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}
