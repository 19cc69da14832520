import { splitEdge, splitTriangle } from "./flip.ts";
import { locate } from "./locate.ts";
import { int, real } from "./read.ts";
import { addVertex, apex, head, inCircle, next, prev, type Triangulation, turnTo } from "./triangulation.ts";

/** Wanted length of triangle sides at a place, in grid steps. */
export type SizeField = (y: number, z: number) => number;

/**
 * Greatest circumradius over shortest side: 1.25 means no angle below 23.6 degrees, a little more than the √2 (20.7 degrees)
 * for which termination is proven, and in practice reached.
 */
const WORST_SHAPE = 1.25;
/** Sides are not divided below this many grid steps: rounding to the grid would bend them. */
const SHORTEST = 64;
/** Hull edges meeting at less than 60 degrees are divided at powers of two, so that their parts do not drive each other on. */
const ACUTE_COSINE = 0.5;
/** Circumradius of an equilateral triangle over its side is 1/√3. */
const SIDE_OVER_RADIUS = Math.sqrt(3);

/**
 * Delaunay refinement (J. Ruppert, J. Algorithms 18, 1995, with concentric shells at acute corners): adds circumcentres and midpoints
 * of hull edges until no triangle is badly shaped, larger than `size` allows, or one of the `wanted` triangles.
 * Stops at `mostVertices`; what is left then is coarser, not wrong. Changes `m` in place; the region it covers stays the same.
 */
export function refine(m: Triangulation, size: SizeField, wanted: Iterable<number>, mostVertices: number): void {
  const acute = acuteCorners(m);
  const edges: Ticket[] = [];
  const triangles: Ticket[] = [];
  for (let e = 0; e < 3 * m.triangles; e++) if (int(m.twin, e) < 0) edges.push(ticket(m, e, false));
  for (let t = m.triangles - 1; t >= 0; t--) triangles.push(ticket(m, 3 * t, false));
  for (const t of wanted) triangles.push(ticket(m, 3 * t, true));

  const enqueue = (p: number) => {
    for (const e of around(m, p)) {
      triangles.push(ticket(m, e, false));
      for (let k = 0, f = e; k < 3; k++, f = next(f)) if (int(m.twin, f) < 0) edges.push(ticket(m, f, false));
    }
  };

  while (m.vertices < mostVertices) {
    const edge = edges.pop();
    if (edge) {
      if (!holds(m, edge) || int(m.twin, edge.e) >= 0) continue;
      const p = encroached(m, edge.e) ? divide(m, edge.e, acute) : -1;
      if (p >= 0) enqueue(p);
      continue;
    }
    const triangle = triangles.pop();
    if (!triangle) return;
    if (!holds(m, triangle) || !(triangle.forced || isBad(m, triangle.e, size))) continue;
    const blocked: number[] = [];
    const p = addCircumcentre(m, triangle.e, blocked);
    if (p >= 0) enqueue(p);
    let divided = false;
    for (const late of blocked.map((e) => ticket(m, e, true))) {
      const q = holds(m, late) ? divide(m, late.e, acute) : -1;
      if (q >= 0) enqueue(q);
      divided ||= q >= 0;
    }
    // Edges first, then this triangle again, if it is still there.
    if (divided) triangles.push(triangle);
  }
}

/** A half-edge and the corners its triangle had when it was queued: whoever comes late finds out. */
interface Ticket {
  readonly e: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly forced: boolean;
}

const ticket = (m: Triangulation, e: number, forced: boolean): Ticket => ({
  e,
  a: int(m.corner, e),
  b: head(m, e),
  c: apex(m, e),
  forced,
});

const holds = (m: Triangulation, { e, a, b, c }: Ticket): boolean =>
  int(m.corner, e) === a && head(m, e) === b && apex(m, e) === c;

function acuteCorners(m: Triangulation): Int32Array {
  const acute = new Int32Array(m.vertices);
  for (let e = 0; e < 3 * m.triangles; e++) {
    if (int(m.twin, e) >= 0) continue;
    // Turn round the start of e to the other hull edge there; the corner is acute when the turn stays below 60 degrees.
    const v = int(m.corner, e);
    let f = prev(e);
    let angle = angleAt(m, e);
    while (int(m.twin, f) >= 0) {
      angle += angleAt(m, int(m.twin, f));
      f = prev(int(m.twin, f));
    }
    if (angle < Math.acos(ACUTE_COSINE) - 1e-6) acute[v] = 1;
  }
  return acute;
}

/** Angle of the triangle of `e` at the start of `e` [rad]. */
function angleAt(m: Triangulation, e: number): number {
  const [a, b, c] = [int(m.corner, e), head(m, e), apex(m, e)];
  const by = real(m.y, b) - real(m.y, a);
  const bz = real(m.z, b) - real(m.z, a);
  const cy = real(m.y, c) - real(m.y, a);
  const cz = real(m.z, c) - real(m.z, a);
  return Math.atan2(by * cz - bz * cy, by * cy + bz * cz);
}

/** Half-edges that start at `p`, anticlockwise from the hull if `p` lies on it. */
function around(m: Triangulation, p: number): number[] {
  const first = int(m.spoke, p);
  const found = [first];
  let e = int(m.twin, prev(first));
  for (; e >= 0 && e !== first; e = int(m.twin, prev(e))) found.push(e);
  if (e === first) return found;
  for (let back = int(m.twin, first); back >= 0; back = int(m.twin, next(back))) found.push(next(back));
  return found;
}

const squaredLength = (m: Triangulation, e: number): number => squared(m, int(m.corner, e), head(m, e));

const squared = (m: Triangulation, a: number, b: number): number =>
  (real(m.y, a) - real(m.y, b)) ** 2 + (real(m.z, a) - real(m.z, b)) ** 2;

/** Whether the vertex opposite hull edge `e` lies in the circle over it. */
const encroached = (m: Triangulation, e: number): boolean =>
  isEncroachedBy(m, e, real(m.y, apex(m, e)), real(m.z, apex(m, e)));

function isEncroachedBy(m: Triangulation, e: number, y: number, z: number): boolean {
  const [a, b] = [int(m.corner, e), head(m, e)];
  return (real(m.y, a) - y) * (real(m.y, b) - y) + (real(m.z, a) - z) * (real(m.z, b) - z) < 0;
}

const isDivisible = (m: Triangulation, e: number): boolean => squaredLength(m, e) >= (2 * SHORTEST) ** 2;

/** Divides hull edge `e`; returns the new vertex or -1 when the edge is too short. */
function divide(m: Triangulation, e: number, acute: Int32Array): number {
  if (!isDivisible(m, e)) return -1;
  const [a, b] = [int(m.corner, e), head(m, e)];
  const sharpA = a < acute.length && int(acute, a) === 1;
  const sharpB = b < acute.length && int(acute, b) === 1;
  let share = 0.5;
  if (sharpA !== sharpB) {
    const length = Math.sqrt(squaredLength(m, e));
    // The power of two nearest to half the length lies between a third and two thirds of it.
    const shell = 2 ** Math.round(Math.log2(length / 2));
    share = sharpA ? shell / length : 1 - shell / length;
  }
  const y = Math.round(real(m.y, a) + share * (real(m.y, b) - real(m.y, a)));
  const z = Math.round(real(m.z, a) + share * (real(m.z, b) - real(m.z, a)));
  // Rounding may push the point off a sloping edge by half a step; never across the triangle.
  const c = apex(m, e);
  if (turnTo(m, b, c, y, z) <= 0 || turnTo(m, c, a, y, z) <= 0) return -1;
  const p = addVertex(m, y, z);
  splitEdge(m, e, p);
  return p;
}

function isBad(m: Triangulation, e: number, size: SizeField): boolean {
  const [a, b, c] = [int(m.corner, e), head(m, e), apex(m, e)];
  const ab = squared(m, a, b);
  const bc = squared(m, b, c);
  const ca = squared(m, c, a);
  const shortest = Math.min(ab, bc, ca);
  if (shortest < (2 * SHORTEST) ** 2) return false;
  const twiceArea = turnTo(m, a, b, real(m.y, c), real(m.z, c));
  const radiusSquared = (ab * bc * ca) / (4 * twiceArea * twiceArea);
  if (radiusSquared > WORST_SHAPE * WORST_SHAPE * shortest) return true;
  const wanted = size(
    (real(m.y, a) + real(m.y, b) + real(m.y, c)) / 3,
    (real(m.z, a) + real(m.z, b) + real(m.z, c)) / 3,
  );
  return SIDE_OVER_RADIUS * Math.sqrt(radiusSquared) > wanted;
}

/**
 * Adds the circumcentre of the triangle of `e` and returns it; returns -1 and names in `blocked` the hull edges that the centre
 * lies beyond or too close to, which have to be divided first.
 */
function addCircumcentre(m: Triangulation, e: number, blocked: number[]): number {
  const [a, b, c] = [int(m.corner, e), head(m, e), apex(m, e)];
  const by = real(m.y, b) - real(m.y, a);
  const bz = real(m.z, b) - real(m.z, a);
  const cy = real(m.y, c) - real(m.y, a);
  const cz = real(m.z, c) - real(m.z, a);
  const d = 2 * (by * cz - bz * cy);
  const b2 = by * by + bz * bz;
  const c2 = cy * cy + cz * cz;
  const y = Math.round(real(m.y, a) + (cz * b2 - bz * c2) / d);
  const z = Math.round(real(m.z, a) + (by * c2 - cy * b2) / d);
  const place = locate(m, e, y, z);
  if (!place || place.where === "at") return -1;
  if (place.where === "beyond" || (place.where === "on" && int(m.twin, place.edge) < 0)) {
    blocked.push(place.edge);
    return -1;
  }
  for (const hull of hullOfCavity(m, place.edge, y, z)) if (isEncroachedBy(m, hull, y, z)) blocked.push(hull);
  if (blocked.length > 0) return -1;
  const p = addVertex(m, y, z);
  if (place.where === "on") splitEdge(m, place.edge, p);
  else splitTriangle(m, place.edge, p);
  return p;
}

/** Hull edges of the triangles whose circles hold a point that lies in the triangle of `from`. */
function hullOfCavity(m: Triangulation, from: number, y: number, z: number): number[] {
  const hull: number[] = [];
  const seen = new Set<number>([Math.floor(from / 3)]);
  for (const t of seen) {
    for (let e = 3 * t; e < 3 * t + 3; e++) {
      const f = int(m.twin, e);
      if (f < 0) {
        hull.push(e);
        continue;
      }
      const u = Math.floor(f / 3);
      if (seen.has(u)) continue;
      if (inCircle(m, int(m.corner, 3 * u), int(m.corner, 3 * u + 1), int(m.corner, 3 * u + 2), y, z)) seen.add(u);
    }
  }
  return hull;
}
