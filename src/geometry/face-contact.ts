import { clipConvex } from "./convex.ts";
import { centroid, type Ring, signedArea } from "./polygon.ts";
import type { Face } from "./prism.ts";
import { along, angleBetween, dot, perpendicularPair, scale, subtract, type Vec2, type Vec3 } from "./vector.ts";

/**
 * Two flat faces that look at each other. Distances [m] are taken along the first face's normal, positive apart, negative where
 * the second lies inside the first body. `overlap` is the shared part, drawn on the first face, counter-clockwise about its
 * normal; empty where they are side by side.
 */
export interface FaceContact {
  /** Distance at the middle of the overlap (of the second face where there is none). */
  readonly gap: number;
  /** Least and greatest distance over the overlap; both equal gap where the faces are parallel. */
  readonly leastGap: number;
  readonly widestGap: number;
  readonly overlap: readonly Vec3[];
  /** Area of the overlap [m²]. */
  readonly area: number;
  /** Middle of the overlap, on the first face. */
  readonly middle: Vec3;
  /** Angle by which the faces miss being parallel [rad]. */
  readonly tilt: number;
}

/** An overlap this small [m²] is an edge touching an edge, not a contact: 1e-9 m of rounding along a metre of edge. */
const NO_AREA = 1e-9;

/**
 * The contact of two convex faces, or undefined where they do not look at each other within `tolerance` [rad] or are empty.
 * How far apart they may be and still count as a contact is for the caller to say.
 */
export function faceContact(a: Face, b: Face, tolerance: number): FaceContact | undefined {
  const origin = a.vertices[0];
  const other = b.vertices[0];
  if (origin === undefined || other === undefined) return undefined;
  const tilt = angleBetween(a.normal, scale(b.normal, -1));
  if (tilt > tolerance) return undefined;

  const [u, v] = perpendicularPair(a.normal);
  const flatten = (p: Vec3): Vec2 => [dot(subtract(p, origin), u), dot(subtract(p, origin), v)];
  const lift = ([x, y]: Vec2): Vec3 => along(along(origin, u, x), v, y);
  // Seen along a's normal, b runs clockwise.
  const shared = clipConvex(a.vertices.map(flatten), b.vertices.map(flatten).reverse());
  const area = signedArea(shared);
  const overlap = area > NO_AREA ? shared : [];

  const slope = dot(a.normal, b.normal);
  const gapAt = (p: Vec3): number => dot(subtract(other, p), b.normal) / slope;
  const middle = lift(overlap.length > 0 ? centroid({ outer: overlap, holes: [] }) : mean(b.vertices.map(flatten)));
  const gap = gapAt(middle);
  let [leastGap, widestGap] = [gap, gap];
  for (const p of overlap) {
    const here = gapAt(lift(p));
    leastGap = Math.min(leastGap, here);
    widestGap = Math.max(widestGap, here);
  }
  return { gap, leastGap, widestGap, overlap: overlap.map(lift), area: overlap.length > 0 ? area : 0, middle, tilt };
}

function mean(points: Ring): Vec2 {
  let [x, y] = [0, 0];
  for (const p of points) {
    x += p[0] / points.length;
    y += p[1] / points.length;
  }
  return [x, y];
}
