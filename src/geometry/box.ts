import { type Bounds3, boundsOf } from "./bounds.ts";
import { along, cross, dot, length, scale, subtract, type Vec3 } from "./vector.ts";

/** A box at any angle: its centre [m], three unit vectors square to each other, and half its size along each [m]. */
export interface OrientedBox {
  readonly centre: Vec3;
  readonly axes: readonly [Vec3, Vec3, Vec3];
  readonly half: readonly [number, number, number];
}

/**
 * How far two bodies are inside each other [m]. depth > 0: they overlap, and moving the second by depth along axis parts them;
 * 0: they touch; < 0: they are apart by at least −depth (exact where two faces or a face and a point are nearest, a lower bound
 * otherwise). axis is a unit vector from the first towards the second.
 */
export interface Penetration {
  readonly depth: number;
  readonly axis: Vec3;
}

/** Sine [rad] under which two edges count as parallel: their cross product then says nothing the face normals do not say. */
const PARALLEL_SINE = 1e-9;

/** The eight corners of a box [m]: the sign of the third axis changes fastest, that of the first slowest. */
export function corners(box: OrientedBox): readonly Vec3[] {
  const [a, b, c] = box.axes;
  const [p, q, r] = box.half;
  const out: Vec3[] = [];
  for (const i of [-p, p]) {
    for (const j of [-q, q]) {
      for (const k of [-r, r]) out.push(along(along(along(box.centre, a, i), b, j), c, k));
    }
  }
  return out;
}

/** The smallest box along the global axes around an oriented box [m]. */
export const boxBounds = (box: OrientedBox): Bounds3 => boundsOf(corners(box));

/** Half the length of the shadow a box casts on the unit vector `axis` [m]. */
export const shadow = (box: OrientedBox, axis: Vec3): number =>
  box.half[0] * Math.abs(dot(box.axes[0], axis)) +
  box.half[1] * Math.abs(dot(box.axes[1], axis)) +
  box.half[2] * Math.abs(dot(box.axes[2], axis));

/**
 * Two boxes by the separating-axis test over six face normals and nine edge pairs (S. Gottschalk et al., "OBBTree", 1996): two
 * convex bodies are apart exactly when their shadows on one of these axes are. Rounding stays below 1e-12 m for frames of some
 * metres. Of equal axes the first tried stands, so the answer is the same on every run.
 */
export function boxPenetration(a: OrientedBox, b: OrientedBox): Penetration {
  const between = subtract(b.centre, a.centre);
  let depth = Infinity;
  let best: Vec3 = a.axes[0];
  const attempt = (axis: Vec3): void => {
    const overlap = shadow(a, axis) + shadow(b, axis) - Math.abs(dot(between, axis));
    if (overlap < depth) {
      depth = overlap;
      best = axis;
    }
  };
  for (const axis of a.axes) attempt(axis);
  for (const axis of b.axes) attempt(axis);
  for (const p of a.axes) {
    for (const q of b.axes) {
      const normal = cross(p, q);
      const sine = length(normal);
      if (sine > PARALLEL_SINE) attempt(scale(normal, 1 / sine));
    }
  }
  return { depth, axis: dot(between, best) < 0 ? scale(best, -1) : best };
}
