import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, length } from "../../geometry/vector.ts";
import { SolveCheckFailed } from "../errors.ts";
import type { NodeForces } from "../load/applied-case.ts";
import type { Resultant } from "../load/resultant.ts";
import type { FrameModel } from "../model.ts";
import { ORIGIN } from "../triad.ts";

/** Every solution must satisfy its equations to this relative defect; correct ones come out near 1e-12. */
const DEFECT_ALLOWED = 1e-8;

/** Rounding of a displacement makes a few such errors in the forces of the members that meet there. */
const ROUNDINGS = 16;
/** The rounding of displacements may stand for this fraction of the loads at most; else nothing can be told about them. */
const PRECISION_ALLOWED = 1e-5;

/**
 * Throws SolveCheckFailed for a defect beyond the allowed one. `rounding` is the defect that the last digit of the
 * displacements alone explains: it matters only where parts of hugely different stiffness move together.
 */
export function demand(check: string, defect: number, rounding = 0): number {
  const allowed = DEFECT_ALLOWED + ROUNDINGS * rounding;
  if (!(defect <= allowed)) throw new SolveCheckFailed(check, defect, allowed);
  return defect;
}

/** Throws SolveCheckFailed when rounding blurs forces as large as `loads`. */
export function demandPrecision(rounding: number, loads: number): void {
  if (loads === 0) return; // supports that settle may leave a frame without any force
  const defect = (ROUNDINGS * rounding) / loads;
  if (!(defect <= PRECISION_ALLOWED)) throw new SolveCheckFailed("precision", defect, PRECISION_ALLOWED);
}

export const share = (part: number, whole: number): number => (part === 0 ? 0 : part / whole);

/** Largest force in an array of six-component entries; moments count as forces at the lever `size`. */
export function largestForce(values: Float64Array, size: number): number {
  let largest = 0;
  for (let i = 0; i < values.length; i++) {
    const own = Math.abs(values[i] as number);
    largest = Math.max(largest, i % 6 < 3 ? own : own / size);
  }
  return largest;
}

/** The same of forces on single freedoms. */
export function largestOnNodes({ freedoms, values }: NodeForces, size: number): number {
  return values.reduce((largest, value, i) => {
    const own = Math.abs(value);
    return Math.max(largest, (freedoms[i] as number) % 6 < 3 ? own : own / size);
  }, 0);
}

/**
 * What is left of applied loads and ground forces (six a node) together, beside the sums of their sizes and the largest
 * force in the frame, `inside`; moments likewise, at the lever `size`.
 */
export function equilibriumDefect(
  model: FrameModel,
  applied: Resultant,
  ground: Float64Array,
  inside: number,
  size: number,
): number {
  let [force, moment]: [Vec3, Vec3] = [applied.force, applied.moment];
  let [forceScale, momentScale] = [applied.forceScale + inside, applied.momentScale + inside * size];
  model.nodes.forEach((node, n) => {
    const at = 6 * n;
    const f: Vec3 = [ground[at] as number, ground[at + 1] as number, ground[at + 2] as number];
    const m: Vec3 = [ground[at + 3] as number, ground[at + 4] as number, ground[at + 5] as number];
    if (f.every((c) => c === 0) && m.every((c) => c === 0)) return;
    force = add(force, f);
    moment = add(moment, add(m, cross(node, f)));
    forceScale += length(f);
    momentScale += length(m) + length(node) * length(f);
  });
  return Math.max(share(length(force), forceScale), share(length(moment), momentScale));
}

const NO_RESULTANT: Resultant = { force: ORIGIN, moment: ORIGIN, forceScale: 0, momentScale: 0 };

/** Resultants added up with factors. */
export function combineResultants(parts: readonly (readonly [number, Resultant])[]): Resultant {
  let sum = NO_RESULTANT;
  for (const [factor, part] of parts) {
    const scaled = (v: Vec3): Vec3 => [v[0] * factor, v[1] * factor, v[2] * factor];
    sum = {
      force: add(sum.force, scaled(part.force)),
      moment: add(sum.moment, scaled(part.moment)),
      forceScale: sum.forceScale + Math.abs(factor) * part.forceScale,
      momentScale: sum.momentScale + Math.abs(factor) * part.momentScale,
    };
  }
  return sum;
}
