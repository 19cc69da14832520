import type { Grid } from "./grid.ts";
import { next, type Triangulation } from "./triangulation.ts";

/** Nodes of one six-node triangle. */
export const NODES = 6;

/**
 * A mesh of six-node triangles with straight sides. Lengths are in units of half the section's size, from its centroid, so that every
 * number here is of the order of one.
 */
export interface QuadraticMesh {
  readonly nodes: number;
  readonly elements: number;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Six nodes per element: corners 0 1 2, then the middles of sides 01, 12, 20. */
  readonly node: Int32Array;
  /** For each node the ring it lies on (0 outer, 1 … holes), or -1 inside. */
  readonly ring: Int32Array;
  /** Area of each element. */
  readonly area: Float64Array;
}

/** Where the mesh's origin lies on the grid, and how many grid steps are one of its units. */
export interface MeshFrame {
  readonly y: number;
  readonly z: number;
  readonly unit: number;
}

/** Puts a node in the middle of every side of a triangulation. */
export function quadraticMesh(m: Triangulation, grid: Grid, frame: MeshFrame): QuadraticMesh {
  const node = new Int32Array(NODES * m.triangles);
  let nodes = m.vertices;
  for (let e = 0; e < 3 * m.triangles; e++) {
    const t = Math.floor(e / 3);
    const f = m.twin[e] as number;
    node[NODES * t + (e % 3)] = m.corner[e] as number;
    // The half-edge with the lower number names the node that both share.
    node[NODES * t + 3 + (e % 3)] =
      f >= 0 && f < e ? (node[NODES * Math.floor(f / 3) + 3 + (f % 3)] as number) : nodes++;
  }
  const y = new Float64Array(nodes);
  const z = new Float64Array(nodes);
  for (let v = 0; v < m.vertices; v++) {
    y[v] = ((m.y[v] as number) - frame.y) / frame.unit;
    z[v] = ((m.z[v] as number) - frame.z) / frame.unit;
  }
  const area = new Float64Array(m.triangles);
  for (let t = 0; t < m.triangles; t++) {
    const [a, b, c] = [node[NODES * t] as number, node[NODES * t + 1] as number, node[NODES * t + 2] as number];
    for (const [p, q, mid] of [
      [a, b, 3],
      [b, c, 4],
      [c, a, 5],
    ] as const) {
      y[node[NODES * t + mid] as number] = ((y[p] as number) + (y[q] as number)) / 2;
      z[node[NODES * t + mid] as number] = ((z[p] as number) + (z[q] as number)) / 2;
    }
    area[t] =
      (((y[b] as number) - (y[a] as number)) * ((z[c] as number) - (z[a] as number)) -
        ((z[b] as number) - (z[a] as number)) * ((y[c] as number) - (y[a] as number))) /
      2;
  }
  return { nodes, elements: m.triangles, y, z, node, ring: ringOfNodes(m, grid, node, nodes), area };
}

/** Follows the hull from the rings' first points, which are the first vertices of the triangulation in ring order. */
function ringOfNodes(m: Triangulation, grid: Grid, node: Int32Array, nodes: number): Int32Array {
  const hullFrom = new Int32Array(m.vertices).fill(-1);
  for (let e = 0; e < 3 * m.triangles; e++) if ((m.twin[e] as number) < 0) hullFrom[m.corner[e] as number] = e;
  const ring = new Int32Array(nodes).fill(-1);
  let first = 0;
  grid.rings.forEach((points, index) => {
    let v = first;
    do {
      const e = hullFrom[v] as number;
      ring[v] = index;
      ring[node[NODES * Math.floor(e / 3) + 3 + (e % 3)] as number] = index;
      v = m.corner[next(e)] as number;
    } while (v !== first);
    first += points.y.length;
  });
  return ring;
}
