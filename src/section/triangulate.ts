import { flip, isConvexAround, legalise, splitEdge, splitTriangle } from "./flip.ts";
import type { Grid } from "./grid.ts";
import { locate } from "./locate.ts";
import {
  addTriangle,
  addVertex,
  around,
  emptyTriangulation,
  head,
  join,
  next,
  prev,
  type Triangulation,
  turn,
} from "./triangulation.ts";

/** Corners of the box around everything are the first vertices. */
const BOX_CORNERS = 4;
/** The box reaches this much further than the section, so that no input point lies on it. */
const BOX_MARGIN = 1.5;

/**
 * Constrained Delaunay triangulation of the region between the rings; hull edges are exactly the rings' edges.
 * Points are inserted one by one with Lawson's flips, missing ring edges recovered by flips (S. W. Sloan, "A fast algorithm for
 * generating constrained Delaunay triangulations", Computers & Structures 47, 1993), then everything outside is carved away.
 * The rings must have passed `checkRings`.
 */
export function triangulate(grid: Grid): Triangulation {
  const m = box(grid);
  const segments: (readonly [number, number])[] = [];
  for (const ring of grid.rings) {
    const first = m.vertices;
    const n = ring.y.length;
    for (let i = 0; i < n; i++) {
      insert(m, ring.y[i] as number, ring.z[i] as number);
      segments.push([first + i, first + ((i + 1) % n)]);
    }
  }
  for (const [a, b] of segments) fix(m, a, b);
  legalise(
    m,
    Array.from({ length: 3 * m.triangles }, (_, e) => e),
  );
  return carve(m);
}

function box(grid: Grid): Triangulation {
  let reach = 0;
  for (const { y, z } of grid.rings) {
    for (let i = 0; i < y.length; i++) reach = Math.max(reach, Math.abs(y[i] as number), Math.abs(z[i] as number));
  }
  const r = Math.ceil(BOX_MARGIN * reach);
  const m = emptyTriangulation();
  addVertex(m, -r, -r);
  addVertex(m, r, -r);
  addVertex(m, r, r);
  addVertex(m, -r, r);
  join(m, addTriangle(m, 0, 1, 2) + 2, addTriangle(m, 0, 2, 3));
  return m;
}

function insert(m: Triangulation, y: number, z: number): void {
  const place = locate(m, 3 * (m.triangles - 1), y, z);
  const p = addVertex(m, y, z);
  if (place?.where === "inside") splitTriangle(m, place.edge, p);
  else if (place?.where === "on") splitEdge(m, place.edge, p);
  else throw new RangeError("section: two points of its outline coincide");
}

/** Makes a-b an edge and fixes it. */
function fix(m: Triangulation, a: number, b: number): void {
  const crossing = edgesAcross(m, a, b);
  // Each pass flips at least one edge away from a-b, so the queue empties; the count only guards against a broken invariant.
  let budget = 100 + crossing.length * crossing.length * 10;
  for (let pair = crossing.shift(); pair; pair = crossing.shift()) {
    if (budget-- <= 0) throw new RangeError("section: its outline has detail too fine to triangulate");
    const e = halfEdge(m, pair[0], pair[1]);
    if (e < 0) continue;
    if (!isConvexAround(m, e)) {
      crossing.push(pair);
      continue;
    }
    flip(m, e);
    // The new diagonal runs between the two vertices opposite, at the slot before e.
    const u = m.corner[prev(e)] as number;
    const v = head(m, prev(e));
    if (u !== a && u !== b && v !== a && v !== b && separates(m, a, b, u, v)) crossing.push([u, v]);
  }
  const e = halfEdge(m, a, b);
  if (e < 0) throw new RangeError("section: its outline has detail too fine to triangulate");
  m.fixed[e] = 1;
  m.fixed[m.twin[e] as number] = 1;
}

const separates = (m: Triangulation, a: number, b: number, u: number, v: number): boolean =>
  turn(m, a, b, u) > 0 !== turn(m, a, b, v) > 0;

/** The edges that the line from a to b crosses, as pairs of vertices, in order. */
function edgesAcross(m: Triangulation, a: number, b: number): [number, number][] {
  const found: [number, number][] = [];
  if (halfEdge(m, a, b) >= 0) return found;
  let e = m.spoke[a] as number;
  // The triangle at a whose far edge the line leaves through.
  while (!(turn(m, a, b, head(m, e)) < 0 && turn(m, a, b, m.corner[prev(e)] as number) > 0 && ahead(m, b, e))) {
    e = m.twin[prev(e)] as number;
  }
  for (let out = next(e); ; ) {
    found.push([m.corner[out] as number, head(m, out)]);
    const back = m.twin[out] as number;
    const far = m.corner[prev(back)] as number;
    if (far === b) return found;
    // `back` runs left to right of the line; leave through whichever of its neighbours the line meets.
    out = turn(m, a, b, far) > 0 ? next(back) : prev(back);
    if (turn(m, a, b, far) === 0) throw new RangeError("section: a point of its outline lies on another of its edges");
  }
}

/** Whether b lies beyond the far edge of the triangle of `e`, seen from where `e` starts. */
const ahead = (m: Triangulation, b: number, e: number): boolean =>
  turn(m, head(m, e), m.corner[prev(e)] as number, b) < 0;

/** The half-edge from u to v, or -1. */
function halfEdge(m: Triangulation, u: number, v: number): number {
  return around(m, u).find((e) => head(m, e) === v) ?? -1;
}

/** Keeps the triangles inside an odd number of rings and drops the box. */
function carve(m: Triangulation): Triangulation {
  const depth = new Int32Array(m.triangles).fill(-1);
  // The first half-edge on the box's hull marks a triangle outside every ring.
  const seed = Math.floor(m.twin.subarray(0, 3 * m.triangles).indexOf(-1) / 3);
  depth[seed] = 0;
  const queue = [seed];
  for (let t = queue.pop(); t !== undefined; t = queue.pop()) {
    for (let e = 3 * t; e < 3 * t + 3; e++) {
      const f = m.twin[e] as number;
      if (f < 0) continue;
      const u = Math.floor(f / 3);
      if ((depth[u] as number) >= 0) continue;
      depth[u] = ((depth[t] as number) + (m.fixed[e] as number)) % 2;
      queue.push(u);
    }
  }
  const kept = emptyTriangulation();
  for (let v = BOX_CORNERS; v < m.vertices; v++) addVertex(kept, m.y[v] as number, m.z[v] as number);
  const moved = new Int32Array(m.triangles).fill(-1);
  for (let t = 0; t < m.triangles; t++) {
    if ((depth[t] as number) !== 1) continue;
    const [a, b, c] = [m.corner[3 * t] as number, m.corner[3 * t + 1] as number, m.corner[3 * t + 2] as number];
    moved[t] = addTriangle(kept, a - BOX_CORNERS, b - BOX_CORNERS, c - BOX_CORNERS);
  }
  for (let e = 0; e < 3 * m.triangles; e++) {
    const here = moved[Math.floor(e / 3)] as number;
    if (here < 0) continue;
    const f = m.twin[e] as number;
    const there = f < 0 ? -1 : (moved[Math.floor(f / 3)] as number);
    kept.twin[here + (e % 3)] = there < 0 ? -1 : there + (f % 3);
    kept.fixed[here + (e % 3)] = m.fixed[e] as number;
  }
  return kept;
}
