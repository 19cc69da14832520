import type { Grid, GridRing } from "./grid.ts";

/**
 * Throws RangeError unless the rings bound one region: no ring crosses or touches itself or another, every hole lies in the outer
 * ring and none in another hole. Coordinates are whole numbers, so every test here is exact.
 */
export function checkRings(grid: Grid): void {
  checkCrossings(grid);
  const [outer, ...holes] = grid.rings;
  if (!outer) return;
  for (const hole of holes) {
    if (!encloses(outer, hole)) throw new RangeError(`section: ${hole.name} lies outside the outer ring`);
    for (const other of holes) {
      if (other !== hole && encloses(other, hole))
        throw new RangeError(`section: ${hole.name} lies inside ${other.name}`);
    }
  }
}

/** All edges of all rings, with the ring each belongs to. */
interface Edges {
  readonly ring: readonly GridRing[];
  readonly index: Int32Array;
  readonly y0: Float64Array;
  readonly z0: Float64Array;
  readonly y1: Float64Array;
  readonly z1: Float64Array;
}

function edgesOf(grid: Grid): Edges {
  const ring: GridRing[] = [];
  const index: number[] = [];
  const ends: [number[], number[], number[], number[]] = [[], [], [], []];
  for (const r of grid.rings) {
    for (let i = 0; i < r.y.length; i++) {
      const j = (i + 1) % r.y.length;
      ring.push(r);
      index.push(i);
      ends[0].push(r.y[i] as number);
      ends[1].push(r.z[i] as number);
      ends[2].push(r.y[j] as number);
      ends[3].push(r.z[j] as number);
    }
  }
  const [y0, z0, y1, z1] = ends;
  return {
    ring,
    index: Int32Array.from(index),
    y0: Float64Array.from(y0),
    z0: Float64Array.from(z0),
    y1: Float64Array.from(y1),
    z1: Float64Array.from(z1),
  };
}

function checkCrossings(grid: Grid): void {
  const edges = edgesOf(grid);
  const low = (e: number) => Math.min(edges.y0[e] as number, edges.y1[e] as number);
  const high = (e: number) => Math.max(edges.y0[e] as number, edges.y1[e] as number);
  // Sweeping in y leaves only pairs that overlap there.
  const order = Int32Array.from(edges.index.keys()).sort((a, b) => low(a) - low(b) || a - b);
  for (let i = 0; i < order.length; i++) {
    const a = order[i] as number;
    for (let j = i + 1; j < order.length && low(order[j] as number) <= high(a); j++) {
      const b = order[j] as number;
      if (conflict(edges, a, b)) throw new RangeError(describe(edges, Math.min(a, b), Math.max(a, b)));
    }
  }
}

/** Whether two edges meet anywhere but in the corner that neighbours share. */
function conflict(edges: Edges, a: number, b: number): boolean {
  const [ay, az, by, bz] = ends(edges, a);
  const [cy, cz, dy, dz] = ends(edges, b);
  if (Math.max(az, bz) < Math.min(cz, dz) || Math.max(cz, dz) < Math.min(az, bz)) return false;
  if (edges.ring[a] === edges.ring[b]) {
    const n = edges.ring[a]?.y.length ?? 0;
    const ahead = ((edges.index[b] as number) - (edges.index[a] as number) + n) % n;
    // Neighbours may share their corner, but must not run back over each other.
    if (ahead === 1) return turn(ay, az, by, bz, dy, dz) === 0 && (by - ay) * (dy - cy) + (bz - az) * (dz - cz) < 0;
    if (ahead === n - 1) return turn(cy, cz, dy, dz, by, bz) === 0 && (dy - cy) * (by - ay) + (dz - cz) * (bz - az) < 0;
  }
  const c = Math.sign(turn(ay, az, by, bz, cy, cz));
  const d = Math.sign(turn(ay, az, by, bz, dy, dz));
  const p = Math.sign(turn(cy, cz, dy, dz, ay, az));
  const q = Math.sign(turn(cy, cz, dy, dz, by, bz));
  // Boxes overlap here (in y by the sweep, in z above), so four zeros mean that the edges overlap in one line.
  return c * d <= 0 && p * q <= 0;
}

function ends(edges: Edges, e: number): readonly [number, number, number, number] {
  return [edges.y0[e] as number, edges.z0[e] as number, edges.y1[e] as number, edges.z1[e] as number];
}

function describe(edges: Edges, a: number, b: number): string {
  const place = (e: number) => `edge ${(edges.index[e] as number) + 1} of ${edges.ring[e]?.name ?? "a ring"}`;
  const itself = edges.ring[a] === edges.ring[b];
  return `section: ${place(a)} crosses or touches ${place(b)}${itself ? ", so the ring intersects itself" : ""}`;
}

/** Twice the signed area of a triangle: positive when a, b, c turn anticlockwise. */
function turn(ay: number, az: number, by: number, bz: number, cy: number, cz: number): number {
  return (by - ay) * (cz - az) - (bz - az) * (cy - ay);
}

/** Whether the first point of `inner` lies in `outer`; enough for rings that do not meet. Crossings of a ray are counted. */
function encloses(outer: GridRing, inner: GridRing): boolean {
  const y = inner.y[0] as number;
  const z = inner.z[0] as number;
  let inside = false;
  for (let i = 0, j = outer.y.length - 1; i < outer.y.length; j = i++) {
    const zi = outer.z[i] as number;
    const zj = outer.z[j] as number;
    if (zi > z === zj > z) continue;
    const side = turn(outer.y[j] as number, zj, outer.y[i] as number, zi, y, z);
    if (side > 0 === zi > zj) inside = !inside;
  }
  return inside;
}
