import { type Factor, factorise, type SymmetricMatrix, solve } from "./cholesky.ts";
import { dissect, type Graph } from "./dissection.ts";
import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
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
    const k = unknown[i] as number;
    if (k >= 0) b[k] = (b[k] as number) + (load[i] as number);
  }
  const x = solve(factor, b);
  return Float64Array.from(unknown, (k) => (k < 0 ? 0 : (x[k] as number)));
}

/** Numbers unknowns in elimination order; an unknown that nodes share comes last, since it touches so many. */
function numberUnknowns(order: Int32Array, group: Int32Array): { unknown: Int32Array; size: number } {
  const members = new Int32Array(group.length);
  for (const g of group) if (g >= 0) members[g] = (members[g] as number) + 1;
  const unknown = new Int32Array(group.length).fill(HELD);
  let size = 0;
  for (const i of order) if ((group[i] as number) === i && (members[i] as number) === 1) unknown[i] = size++;
  for (const i of order) if ((group[i] as number) === i && (members[i] as number) > 1) unknown[i] = size++;
  for (const i of order) if ((group[i] as number) >= 0) unknown[i] = unknown[group[i] as number] as number;
  return { unknown, size };
}

function assemble(mesh: QuadraticMesh, unknown: Int32Array, size: number): SymmetricMatrix {
  // Room for every element entry, column by column; entries at one place are added when the column is closed.
  const room = new Int32Array(size + 1);
  for (let e = 0; e < NODES * mesh.elements; e += NODES) {
    for (let i = 0; i < NODES; i++) {
      const a = unknown[mesh.node[e + i] as number] as number;
      for (let j = 0; j < NODES; j++) {
        const b = unknown[mesh.node[e + j] as number] as number;
        if (a >= 0 && a <= b) room[b + 1] = (room[b + 1] as number) + 1;
      }
    }
  }
  for (let k = 0; k < size; k++) room[k + 1] = (room[k + 1] as number) + (room[k] as number);
  const rows = new Int32Array(room[size] as number);
  const values = new Float64Array(room[size] as number);
  const fill = room.slice();
  const grad = new Float64Array(2 * NODES * POINTS);
  for (let t = 0; t < mesh.elements; t++) {
    gradients(mesh, t, grad);
    const weight = (mesh.area[t] as number) / POINTS;
    for (let i = 0; i < NODES; i++) {
      const a = unknown[mesh.node[NODES * t + i] as number] as number;
      if (a < 0) continue;
      for (let j = 0; j < NODES; j++) {
        const b = unknown[mesh.node[NODES * t + j] as number] as number;
        if (a > b) continue;
        let k = 0;
        for (let p = 0; p < 2 * NODES * POINTS; p += 2 * NODES) {
          k +=
            (grad[p + 2 * i] as number) * (grad[p + 2 * j] as number) +
            (grad[p + 2 * i + 1] as number) * (grad[p + 2 * j + 1] as number);
        }
        const at = fill[b] as number;
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
    for (let p = room[k] as number; p < (room[k + 1] as number); p++) {
      const i = rows[p] as number;
      const seen = place[i] as number;
      if (seen >= first) {
        values[seen] = (values[seen] as number) + (values[p] as number);
      } else {
        place[i] = count;
        rows[count] = i;
        values[count++] = values[p] as number;
      }
    }
    column[k + 1] = count;
  }
  return { size, column, row: rows.subarray(0, count), value: values.subarray(0, count) };
}

function nodeGraph(mesh: QuadraticMesh): Graph {
  const start = new Int32Array(mesh.nodes + 1);
  for (const i of mesh.node) start[i + 1] = (start[i + 1] as number) + NODES - 1;
  for (let i = 0; i < mesh.nodes; i++) start[i + 1] = (start[i + 1] as number) + (start[i] as number);
  const neighbour = new Int32Array(start[mesh.nodes] as number);
  const fill = start.slice();
  for (let e = 0; e < NODES * mesh.elements; e += NODES) {
    for (let i = 0; i < NODES; i++) {
      const a = mesh.node[e + i] as number;
      for (let j = 0; j < NODES; j++) {
        if (i === j) continue;
        const at = fill[a] as number;
        neighbour[at] = mesh.node[e + j] as number;
        fill[a] = at + 1;
      }
    }
  }
  return { start, neighbour };
}
