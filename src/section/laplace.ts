import { type Factor, factorise, type SymmetricMatrix, solve } from "./cholesky.ts";
import { dissect, type Graph } from "./dissection.ts";
import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
import { int, real } from "./read.ts";
import { gradients, POINTS } from "./shape.ts";

/** Marks a node whose value is held at zero. */
export const HELD = -1;

/** The factorised matrix ∫∇u·∇v dA for unknowns that several nodes may share. */
export interface LaplaceSystem {
  /** For each node the number of its unknown, or HELD. */
  readonly unknown: Int32Array;
  readonly factor: Factor;
}

/** Neighbourhood of nodes and the order in which to eliminate them; shared by all systems on one mesh. */
export function eliminationOrder(mesh: QuadraticMesh): Int32Array {
  return dissect(nodeGraph(mesh), mesh.y, mesh.z);
}

/**
 * Assembles and factorises ∫∇u·∇v dA.
 * `group[node]` is HELD, or the node whose value this node shares (itself as a rule).
 */
export function laplaceSystem(mesh: QuadraticMesh, order: Int32Array, group: Int32Array): LaplaceSystem {
  const { unknown, size } = numberUnknowns(order, group);
  return { unknown, factor: factorise(assemble(mesh, unknown, size)) };
}

/** Solves for nodal values, given the load ∫f·v dA of every node; loads of nodes that share a value are added up. */
export function solveLaplace({ unknown, factor }: LaplaceSystem, load: Float64Array): Float64Array {
  const b = new Float64Array(factor.size);
  for (let i = 0; i < load.length; i++) {
    const k = int(unknown, i);
    if (k >= 0) b[k] = real(b, k) + real(load, i);
  }
  const x = solve(factor, b);
  return Float64Array.from(unknown, (k) => (k < 0 ? 0 : real(x, k)));
}

/** Numbers unknowns in elimination order; an unknown that nodes share comes last, since it touches so many. */
function numberUnknowns(order: Int32Array, group: Int32Array): { unknown: Int32Array; size: number } {
  const members = new Int32Array(group.length);
  for (const g of group) if (g >= 0) members[g] = int(members, g) + 1;
  const unknown = new Int32Array(group.length).fill(HELD);
  let size = 0;
  for (const i of order) if (int(group, i) === i && int(members, i) === 1) unknown[i] = size++;
  for (const i of order) if (int(group, i) === i && int(members, i) > 1) unknown[i] = size++;
  for (const i of order) if (int(group, i) >= 0) unknown[i] = int(unknown, int(group, i));
  return { unknown, size };
}

function assemble(mesh: QuadraticMesh, unknown: Int32Array, size: number): SymmetricMatrix {
  // Room for every element entry, column by column; entries at one place are added when the column is closed.
  const room = new Int32Array(size + 1);
  for (let e = 0; e < NODES * mesh.elements; e += NODES) {
    for (let i = 0; i < NODES; i++) {
      const a = int(unknown, int(mesh.node, e + i));
      for (let j = 0; j < NODES; j++) {
        const b = int(unknown, int(mesh.node, e + j));
        if (a >= 0 && a <= b) room[b + 1] = int(room, b + 1) + 1;
      }
    }
  }
  for (let k = 0; k < size; k++) room[k + 1] = int(room, k + 1) + int(room, k);
  const rows = new Int32Array(int(room, size));
  const values = new Float64Array(int(room, size));
  const fill = room.slice();
  const grad = new Float64Array(2 * NODES * POINTS);
  for (let t = 0; t < mesh.elements; t++) {
    gradients(mesh, t, grad);
    const weight = real(mesh.area, t) / POINTS;
    for (let i = 0; i < NODES; i++) {
      const a = int(unknown, int(mesh.node, NODES * t + i));
      if (a < 0) continue;
      for (let j = 0; j < NODES; j++) {
        const b = int(unknown, int(mesh.node, NODES * t + j));
        if (a > b) continue;
        let k = 0;
        for (let p = 0; p < 2 * NODES * POINTS; p += 2 * NODES) {
          k += real(grad, p + 2 * i) * real(grad, p + 2 * j) + real(grad, p + 2 * i + 1) * real(grad, p + 2 * j + 1);
        }
        const at = int(fill, b);
        rows[at] = a;
        values[at] = k * weight;
        fill[b] = at + 1;
      }
    }
  }
  return addedUp(size, room, rows, values);
}

function addedUp(size: number, room: Int32Array, rows: Int32Array, values: Float64Array): SymmetricMatrix {
  const column = new Int32Array(size + 1);
  const place = new Int32Array(size).fill(-1);
  let count = 0;
  for (let k = 0; k < size; k++) {
    const first = count;
    for (let p = int(room, k); p < int(room, k + 1); p++) {
      const i = int(rows, p);
      const seen = int(place, i);
      if (seen >= first) {
        values[seen] = real(values, seen) + real(values, p);
      } else {
        place[i] = count;
        rows[count] = i;
        values[count++] = real(values, p);
      }
    }
    column[k + 1] = count;
  }
  return { size, column, row: rows.subarray(0, count), value: values.subarray(0, count) };
}

function nodeGraph(mesh: QuadraticMesh): Graph {
  const start = new Int32Array(mesh.nodes + 1);
  for (const i of mesh.node) start[i + 1] = int(start, i + 1) + NODES - 1;
  for (let i = 0; i < mesh.nodes; i++) start[i + 1] = int(start, i + 1) + int(start, i);
  const neighbour = new Int32Array(int(start, mesh.nodes));
  const fill = start.slice();
  for (let e = 0; e < NODES * mesh.elements; e += NODES) {
    for (let i = 0; i < NODES; i++) {
      const a = int(mesh.node, e + i);
      for (let j = 0; j < NODES; j++) {
        if (i === j) continue;
        const at = int(fill, a);
        neighbour[at] = int(mesh.node, e + j);
        fill[a] = at + 1;
      }
    }
  }
  return { start, neighbour };
}
