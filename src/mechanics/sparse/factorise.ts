import type { Analysis } from "./analyse.ts";
import { eliminateFronts } from "./eliminate-fronts.ts";
import type { FrontPlan } from "./front-plan.ts";
import { doubtfulPlaces } from "./hidden-motion.ts";
import { judgePivots, type Pivots } from "./pivots.ts";
import { substitute, substituteBack, TOGETHER } from "./substitute.ts";
import { pivotScale, type SymmetricMatrix } from "./symmetric-matrix.ts";
import { type KernelName, makeWorkspace } from "./workspace.ts";

/** A matrix as L·D·Lᵀ. */
export interface Factor {
  readonly n: number;
  readonly pivots: Pivots;
  /** x of K·x = b for k right-hand sides, column by column (n × k in, n × k out). */
  solve(b: Float64Array, k: number): Float64Array;
  /** x of Lᵀ·x = y, both by unknown. */
  solveUpper(y: Float64Array): Float64Array;
}

/**
 * Where no pivot is below this share of its diagonal, none can be mere rounding: a free rack of 10,000 bars, 770 bars long,
 * leaves 7e-6 (measured), and it grows with the cube of the length.
 */
const HIDDEN_RATIO = 1e-3;

/**
 * Factorises without pivoting: safe for stiffness matrices (positive semi-definite), and good for other symmetric matrices
 * as long as no leading block is nearly singular, which shows as a suspicious pivot.
 * A held unknown is tied to ground by a spring as stiff as its own diagonal, so the rest can still be computed.
 * Large matrices use the wide kernel where the platform has it; `kernel` makes a choice of one's own.
 * Throws a RangeError for a matrix of another pattern than the analysis.
 */
export function factorise(analysis: Analysis, matrix: SymmetricMatrix, kernel?: KernelName): Factor {
  checkPattern(analysis, matrix);
  const { plan, n } = analysis;
  const scale = pivotScale(matrix);
  const workspace = makeWorkspace(analysis, kernel);
  const { panels } = workspace;
  const diagonal = new Float64Array(n);
  const watched = new Set<number>();
  for (;;) {
    const judge = judgePivots(plan, matrix, panels, scale, watched);
    eliminateFronts(plan, matrix.value, workspace, diagonal, judge.take);
    const pivots = judge.pivots();
    const before = watched.size;
    if (judge.leastPassed() < HIDDEN_RATIO) {
      for (const place of doubtfulPlaces(plan, panels, diagonal, scale)) watched.add(place);
    }
    if (watched.size === before) return factorOf(plan, panels, diagonal, pivots);
    panels.fill(0);
  }
}

function factorOf(plan: FrontPlan, panels: Float64Array, diagonal: Float64Array, pivots: Pivots): Factor {
  // One piece of memory for all solutions: what is worked on stays in fast memory, and nothing is left to be collected.
  let work: Float64Array | undefined;
  return {
    n: diagonal.length,
    pivots,
    solve(b, k) {
      work ??= new Float64Array(TOGETHER * diagonal.length);
      return substitute(plan, panels, diagonal, b, k, work);
    },
    solveUpper: (y) => substituteBack(plan, panels, y),
  };
}

function checkPattern(analysis: Analysis, matrix: SymmetricMatrix): void {
  const { colStart, rowIndex } = analysis.pattern;
  const same =
    matrix.n === analysis.n &&
    (matrix.colStart === colStart || equal(matrix.colStart, colStart)) &&
    (matrix.rowIndex === rowIndex || equal(matrix.rowIndex, rowIndex));
  if (!same) throw new RangeError("the matrix has another pattern than the one that was analysed");
}

function equal(a: Int32Array, b: Int32Array): boolean {
  if (a.length !== b.length) return false;
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return false;
  return true;
}
