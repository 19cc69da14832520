/**
 * A triangulation as half-edges: edge e of triangle floor(e / 3) runs from corner[e] to corner[next(e)], anticlockwise.
 * Coordinates are whole numbers (see grid.ts), so `turn` is exact.
 * Here and in the solvers array reads are cast to number: the indices come from the same tables and lie within them.
 */
export interface Triangulation {
  y: Float64Array;
  z: Float64Array;
  vertices: number;
  /** Vertex where each half-edge starts. */
  corner: Int32Array;
  /** The half-edge of the neighbouring triangle, or -1 on the hull. */
  twin: Int32Array;
  /** 1 on half-edges that must stay: pieces of the section's boundary. */
  fixed: Int32Array;
  triangles: number;
  /** For each vertex one half-edge that starts there. */
  spoke: Int32Array;
}

/** An empty triangulation. */
export function emptyTriangulation(): Triangulation {
  const room = 64;
  return {
    y: new Float64Array(room),
    z: new Float64Array(room),
    vertices: 0,
    corner: new Int32Array(3 * room),
    twin: new Int32Array(3 * room),
    fixed: new Int32Array(3 * room),
    triangles: 0,
    spoke: new Int32Array(room),
  };
}

/** The next half-edge round the same triangle. */
export const next = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);

/** The previous half-edge round the same triangle. */
export const prev = (e: number): number => (e % 3 === 0 ? e + 2 : e - 1);

/** Vertex where half-edge `e` ends. */
export const head = (m: Triangulation, e: number): number => m.corner[next(e)] as number;

/** Vertex opposite half-edge `e` in its triangle. */
export const apex = (m: Triangulation, e: number): number => m.corner[prev(e)] as number;

/** All half-edges that start at vertex `p`. */
export function around(m: Triangulation, p: number): number[] {
  const first = m.spoke[p] as number;
  const found = [first];
  let e = m.twin[prev(first)] as number;
  for (; e >= 0 && e !== first; e = m.twin[prev(e)] as number) found.push(e);
  if (e === first) return found;
  for (let back = m.twin[first] as number; back >= 0; back = m.twin[next(back)] as number) found.push(next(back));
  return found;
}

/** Adds a vertex, not yet part of any triangle; returns its number. */
export function addVertex(m: Triangulation, y: number, z: number): number {
  const v = m.vertices++;
  if (v >= m.y.length) {
    m.y = grown(m.y, new Float64Array(2 * m.y.length));
    m.z = grown(m.z, new Float64Array(2 * m.z.length));
    m.spoke = grown(m.spoke, new Int32Array(2 * m.spoke.length));
  }
  m.y[v] = y;
  m.z[v] = z;
  return v;
}

/** Adds a triangle without neighbours; returns its first half-edge. */
export function addTriangle(m: Triangulation, a: number, b: number, c: number): number {
  const e = 3 * m.triangles++;
  if (e >= m.corner.length) {
    m.corner = grown(m.corner, new Int32Array(2 * m.corner.length));
    m.twin = grown(m.twin, new Int32Array(2 * m.twin.length));
    m.fixed = grown(m.fixed, new Int32Array(2 * m.fixed.length));
  }
  start(m, e, a);
  start(m, e + 1, b);
  start(m, e + 2, c);
  m.twin.fill(-1, e, e + 3);
  m.fixed.fill(0, e, e + 3);
  return e;
}

/** Makes two half-edges neighbours; either may be -1. */
export function join(m: Triangulation, e: number, f: number): void {
  if (e >= 0) m.twin[e] = f;
  if (f >= 0) m.twin[f] = e;
}

/** Lets half-edge `e` start at vertex `v`. */
export function start(m: Triangulation, e: number, v: number): void {
  m.corner[e] = v;
  m.spoke[v] = e;
}

/** Twice the signed area of a triangle: positive when a, b, c turn anticlockwise. Exact. */
export function turn(m: Triangulation, a: number, b: number, c: number): number {
  return turnTo(m, a, b, m.y[c] as number, m.z[c] as number);
}

/** `turn` with a third point that is no vertex. */
export function turnTo(m: Triangulation, a: number, b: number, y: number, z: number): number {
  const ya = m.y[a] as number;
  const za = m.z[a] as number;
  return ((m.y[b] as number) - ya) * (z - za) - ((m.z[b] as number) - za) * (y - ya);
}

/** Rounding of the circle test is far below this fraction of its terms; ties then count as outside. */
const CIRCLE_ROUNDING = 1e-14;

/** Whether (y, z) lies clearly inside the circle through the anticlockwise triangle a, b, c. */
export function inCircle(m: Triangulation, a: number, b: number, c: number, y: number, z: number): boolean {
  const ay = (m.y[a] as number) - y;
  const az = (m.z[a] as number) - z;
  const by = (m.y[b] as number) - y;
  const bz = (m.z[b] as number) - z;
  const cy = (m.y[c] as number) - y;
  const cz = (m.z[c] as number) - z;
  const a2 = ay * ay + az * az;
  const b2 = by * by + bz * bz;
  const c2 = cy * cy + cz * cz;
  const det = a2 * (by * cz - bz * cy) + b2 * (cy * az - cz * ay) + c2 * (ay * bz - az * by);
  const size =
    a2 * (Math.abs(by * cz) + Math.abs(bz * cy)) +
    b2 * (Math.abs(cy * az) + Math.abs(cz * ay)) +
    c2 * (Math.abs(ay * bz) + Math.abs(az * by));
  return det > CIRCLE_ROUNDING * size;
}

function grown<A extends Float64Array | Int32Array>(from: A, to: A): A {
  to.set(from);
  return to;
}
