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
  const f = m.twin[e] as number;
  const c = apex(m, e);
  const d = apex(m, f);
  // Edge a→b becomes d→c: triangle d b c takes the slots of e, triangle c a d those of f.
  const beyondE = m.twin[prev(f)] as number;
  const beyondF = m.twin[prev(e)] as number;
  const fixedE = m.fixed[prev(f)] as number;
  const fixedF = m.fixed[prev(e)] as number;
  start(m, e, d);
  start(m, f, c);
  // The two kept corners may have pointed at slots that now start elsewhere.
  start(m, next(e), m.corner[next(e)] as number);
  start(m, next(f), m.corner[next(f)] as number);
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
  const f = m.twin[e] as number;
  const c = apex(m, e);
  const d = apex(m, f);
  return turn(m, d, head(m, e), c) > 0 && turn(m, c, m.corner[e] as number, d) > 0;
}

/** Lawson's flips: turns every diagonal whose circle holds the vertex opposite, starting from `edges`, until none is left. */
export function legalise(m: Triangulation, edges: number[]): void {
  for (let e = edges.pop(); e !== undefined; e = edges.pop()) {
    const f = m.twin[e] as number;
    if (f < 0 || (m.fixed[e] as number) === 1) continue;
    const d = apex(m, f);
    if (!inCircle(m, m.corner[e] as number, head(m, e), apex(m, e), m.y[d] as number, m.z[d] as number)) continue;
    if (!isConvexAround(m, e)) continue;
    flip(m, e);
    edges.push(e, next(e), f, next(f));
  }
}

/** Puts vertex `p`, strictly inside the triangle of `e`, into the triangulation. */
export function splitTriangle(m: Triangulation, e: number, p: number): void {
  const e1 = next(e);
  const e2 = prev(e);
  const a = m.corner[e] as number;
  const b = m.corner[e1] as number;
  const c = m.corner[e2] as number;
  const f = addTriangle(m, b, c, p);
  const g = addTriangle(m, c, a, p);
  join(m, f, m.twin[e1] as number);
  join(m, g, m.twin[e2] as number);
  m.fixed[f] = m.fixed[e1] as number;
  m.fixed[g] = m.fixed[e2] as number;
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
  const f = m.twin[e] as number;
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
  const b = m.corner[e1] as number;
  const c = apex(m, e);
  const far = addTriangle(m, p, b, c);
  join(m, far + 1, m.twin[e1] as number);
  m.fixed[far + 1] = m.fixed[e1] as number;
  m.fixed[far] = m.fixed[e] as number;
  start(m, e1, p);
  m.fixed[e1] = 0;
  join(m, e1, far + 2);
  return far;
}
