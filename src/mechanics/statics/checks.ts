import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, length } from "../../geometry/vector.ts";
import { SolveCheckFailed } from "../errors.ts";
import type { Resultant } from "../load/resultant.ts";
import type { FrameModel } from "../model.ts";
import { ORIGIN } from "../triad.ts";

/** Every solution must satisfy its equations to this relative defect; correct ones come out near 1e-12. */
export const DEFECT_ALLOWED = 1e-8;

/** However ill-conditioned a frame is, a defect beyond this is not believed. */
const NEVER_ALLOWED = 1e-5;
/** Rounding of a displacement makes a few such errors in the forces of the members that meet there. */
const ROUNDINGS = 16;

/**
 * Throws SolveCheckFailed for a defect beyond the allowed one. `rounding` is the defect that the last digit of the
 * displacements alone explains: it matters only where parts of hugely different stiffness move together.
 */
export function demand(check: string, defect: number, rounding = 0): number {
  const allowed = Math.min(DEFECT_ALLOWED + ROUNDINGS * rounding, NEVER_ALLOWED);
  if (!(defect <= allowed)) throw new SolveCheckFailed(check, defect, allowed);
  return defect;
}

/** Largest force and largest moment in an array of six-component entries. */
function largestOf(values: Float64Array): readonly [force: number, moment: number] {
  let [force, moment] = [0, 0];
  for (let i = 0; i < values.length; i++) {
    const size = Math.abs(values[i] as number);
    if (i % 6 < 3) force = Math.max(force, size);
    else moment = Math.max(moment, size);
  }
  return [force, moment];
}

/**
 * Largest unbalanced force at a free freedom beside the largest force anywhere, moments likewise. A stray moment is also
 * measured by force × `size`: where no moment acts it is the rounding of a force's lever.
 */
export function residualDefect(
  unbalanced: Float64Array,
  inMembers: Float64Array,
  applied: Float64Array,
  size: number,
): { readonly defect: number; readonly scale: number } {
  const [strayForce, strayMoment] = largestOf(unbalanced);
  const [memberForce, memberMoment] = largestOf(inMembers);
  const [appliedForce, appliedMoment] = largestOf(applied);
  const scale = memberForce + appliedForce + (memberMoment + appliedMoment) / size;
  const stray = Math.max(strayForce, strayMoment / size);
  return { defect: stray === 0 ? 0 : stray / scale, scale };
}

/** What is left of applied loads and ground forces (six a node) together, beside the sums of their sizes. */
export function equilibriumDefect(model: FrameModel, applied: Resultant, ground: Float64Array): number {
  let [force, moment]: [Vec3, Vec3] = [applied.force, applied.moment];
  let [forceScale, momentScale] = [applied.forceScale, applied.momentScale];
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
  const ratio = (value: Vec3, scale: number): number => (scale === 0 ? 0 : length(value) / scale);
  return Math.max(ratio(force, forceScale), ratio(moment, momentScale));
}

export const NO_RESULTANT: Resultant = { force: ORIGIN, moment: ORIGIN, forceScale: 0, momentScale: 0 };

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
