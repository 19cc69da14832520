import type { Grid } from "./grid.ts";
import { int, real } from "./read.ts";
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
    const f = int(m.twin, e);
    node[NODES * t + (e % 3)] = int(m.corner, e);
    // The half-edge with the lower number names the node that both share.
    node[NODES * t + 3 + (e % 3)] = f >= 0 && f < e ? int(node, NODES * Math.floor(f / 3) + 3 + (f % 3)) : nodes++;
  }
  const y = new Float64Array(nodes);
  const z = new Float64Array(nodes);
  for (let v = 0; v < m.vertices; v++) {
    y[v] = (real(m.y, v) - frame.y) / frame.unit;
    z[v] = (real(m.z, v) - frame.z) / frame.unit;
  }
  const area = new Float64Array(m.triangles);
  for (let t = 0; t < m.triangles; t++) {
    const [a, b, c] = [int(node, NODES * t), int(node, NODES * t + 1), int(node, NODES * t + 2)];
    for (const [p, q, mid] of [
      [a, b, 3],
      [b, c, 4],
      [c, a, 5],
    ] as const) {
      y[int(node, NODES * t + mid)] = (real(y, p) + real(y, q)) / 2;
      z[int(node, NODES * t + mid)] = (real(z, p) + real(z, q)) / 2;
    }
    area[t] =
      ((real(y, b) - real(y, a)) * (real(z, c) - real(z, a)) - (real(z, b) - real(z, a)) * (real(y, c) - real(y, a))) /
      2;
  }
  return { nodes, elements: m.triangles, y, z, node, ring: ringOfNodes(m, grid, node, nodes), area };
}

/** Follows the hull from the rings' first points, which are the first vertices of the triangulation in ring order. */
function ringOfNodes(m: Triangulation, grid: Grid, node: Int32Array, nodes: number): Int32Array {
  const hullFrom = new Int32Array(m.vertices).fill(-1);
  for (let e = 0; e < 3 * m.triangles; e++) if (int(m.twin, e) < 0) hullFrom[int(m.corner, e)] = e;
  const ring = new Int32Array(nodes).fill(-1);
  let first = 0;
  grid.rings.forEach((points, index) => {
    let v = first;
    do {
      const e = int(hullFrom, v);
      ring[v] = index;
      ring[int(node, NODES * Math.floor(e / 3) + 3 + (e % 3))] = index;
      v = int(m.corner, next(e));
    } while (v !== first);
    first += points.y.length;
  });
  return ring;
}
