import { int, real } from "./read.ts";
import {
  addTriangle,
  apex,
  head,
  inCircle,
  join,
  next,
  prev,
  start,
  type Triangulation,
  turn,
} from "./triangulation.ts";

/** Turns the diagonal of the two triangles beside `e`; they must form a strictly convex quadrilateral. */
export function flip(m: Triangulation, e: number): void {
  const f = int(m.twin, e);
  const c = apex(m, e);
  const d = apex(m, f);
  // Edge a→b becomes d→c: triangle d b c takes the slots of e, triangle c a d those of f.
  const beyondE = int(m.twin, prev(f));
  const beyondF = int(m.twin, prev(e));
  const fixedE = int(m.fixed, prev(f));
  const fixedF = int(m.fixed, prev(e));
  start(m, e, d);
  start(m, f, c);
  // The two kept corners may have pointed at slots that now start elsewhere.
  start(m, next(e), int(m.corner, next(e)));
  start(m, next(f), int(m.corner, next(f)));
  join(m, e, beyondE);
  join(m, f, beyondF);
  join(m, prev(e), prev(f));
  m.fixed[e] = fixedE;
  m.fixed[f] = fixedF;
  m.fixed[prev(e)] = 0;
  m.fixed[prev(f)] = 0;
}

/** Whether the triangles on both sides of `e` form a strictly convex quadrilateral. */
export function isConvexAround(m: Triangulation, e: number): boolean {
  const f = int(m.twin, e);
  const c = apex(m, e);
  const d = apex(m, f);
  return turn(m, d, head(m, e), c) > 0 && turn(m, c, int(m.corner, e), d) > 0;
}

/** Lawson's flips: turns every diagonal whose circle holds the vertex opposite, starting from `edges`, until none is left. */
export function legalise(m: Triangulation, edges: number[]): void {
  for (let e = edges.pop(); e !== undefined; e = edges.pop()) {
    const f = int(m.twin, e);
    if (f < 0 || int(m.fixed, e) === 1) continue;
    const d = apex(m, f);
    if (!inCircle(m, int(m.corner, e), head(m, e), apex(m, e), real(m.y, d), real(m.z, d))) continue;
    if (!isConvexAround(m, e)) continue;
    flip(m, e);
    edges.push(e, next(e), f, next(f));
  }
}

/** Puts vertex `p`, strictly inside the triangle of `e`, into the triangulation. */
export function splitTriangle(m: Triangulation, e: number, p: number): void {
  const e1 = next(e);
  const e2 = prev(e);
  const a = int(m.corner, e);
  const b = int(m.corner, e1);
  const c = int(m.corner, e2);
  const f = addTriangle(m, b, c, p);
  const g = addTriangle(m, c, a, p);
  join(m, f, int(m.twin, e1));
  join(m, g, int(m.twin, e2));
  m.fixed[f] = int(m.fixed, e1);
  m.fixed[g] = int(m.fixed, e2);
  start(m, e2, p);
  m.fixed[e1] = 0;
  m.fixed[e2] = 0;
  join(m, e1, f + 2);
  join(m, f + 1, g + 2);
  join(m, g + 1, e2);
  legalise(m, [e, f, g]);
}

/** Puts vertex `p`, strictly between the ends of `e`, into the triangulation; a fixed edge stays fixed in both parts. */
export function splitEdge(m: Triangulation, e: number, p: number): void {
  const f = int(m.twin, e);
  const far = splitOneSide(m, e, p);
  const edges = [prev(e), next(far)];
  if (f >= 0) {
    const near = splitOneSide(m, f, p);
    join(m, e, near);
    join(m, far, f);
    edges.push(prev(f), next(near));
  } else {
    m.twin[e] = -1;
  }
  legalise(m, edges);
}

/** Splits the triangle of `e` only: `e` ends at `p` afterwards; returns the half-edge from `p` on to the old end. */
function splitOneSide(m: Triangulation, e: number, p: number): number {
  const e1 = next(e);
  const b = int(m.corner, e1);
  const c = apex(m, e);
  const far = addTriangle(m, p, b, c);
  join(m, far + 1, int(m.twin, e1));
  m.fixed[far + 1] = int(m.fixed, e1);
  m.fixed[far] = int(m.fixed, e);
  start(m, e1, p);
  m.fixed[e1] = 0;
  join(m, e1, far + 2);
  return far;
}
