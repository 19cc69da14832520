import { addCircumcentre } from "./circumcentre.ts";
import { acuteCorners, divide, encroached, SHORTEST, squared } from "./hull.ts";
import { apex, around, head, next, type Triangulation, turnTo } from "./triangulation.ts";

/** Wanted length of triangle sides at a place, in grid steps. */
export type SizeField = (y: number, z: number) => number;

/**
 * Greatest circumradius over shortest side: 1.25 means no angle below 23.6 degrees, a little more than the √2 (20.7 degrees)
 * for which termination is proven, and in practice reached.
 */
const WORST_SHAPE = 1.25;
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
  for (let e = 0; e < 3 * m.triangles; e++) if ((m.twin[e] as number) < 0) edges.push(ticket(m, e, false));
  for (let t = m.triangles - 1; t >= 0; t--) triangles.push(ticket(m, 3 * t, false));
  for (const t of wanted) triangles.push(ticket(m, 3 * t, true));

  const enqueue = (p: number) => {
    for (const e of around(m, p)) {
      triangles.push(ticket(m, e, false));
      for (let k = 0, f = e; k < 3; k++, f = next(f)) if ((m.twin[f] as number) < 0) edges.push(ticket(m, f, false));
    }
  };

  while (m.vertices < mostVertices) {
    const edge = edges.pop();
    if (edge) {
      if (!holds(m, edge) || (m.twin[edge.e] as number) >= 0) continue;
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
  a: m.corner[e] as number,
  b: head(m, e),
  c: apex(m, e),
  forced,
});

const holds = (m: Triangulation, { e, a, b, c }: Ticket): boolean =>
  (m.corner[e] as number) === a && head(m, e) === b && apex(m, e) === c;

function isBad(m: Triangulation, e: number, size: SizeField): boolean {
  const [a, b, c] = [m.corner[e] as number, head(m, e), apex(m, e)];
  const ab = squared(m, a, b);
  const bc = squared(m, b, c);
  const ca = squared(m, c, a);
  const shortest = Math.min(ab, bc, ca);
  if (shortest < (2 * SHORTEST) ** 2) return false;
  const twiceArea = turnTo(m, a, b, m.y[c] as number, m.z[c] as number);
  const radiusSquared = (ab * bc * ca) / (4 * twiceArea * twiceArea);
  if (radiusSquared > WORST_SHAPE * WORST_SHAPE * shortest) return true;
  const wanted = size(
    ((m.y[a] as number) + (m.y[b] as number) + (m.y[c] as number)) / 3,
    ((m.z[a] as number) + (m.z[b] as number) + (m.z[c] as number)) / 3,
  );
  return SIDE_OVER_RADIUS * Math.sqrt(radiusSquared) > wanted;
}
