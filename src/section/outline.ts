import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";

/** One element side on the outline of a mesh, material on its left, and the sides before and after it on the same ring. */
export interface OutlineSide {
  readonly from: number;
  readonly middle: number;
  readonly to: number;
  readonly length: number;
  /** Unit vector along it. */
  readonly y: number;
  readonly z: number;
}

/** All sides on the outline, by the node they start at, and by the node they end at. */
export interface Outline {
  readonly startingAt: ReadonlyMap<number, OutlineSide>;
  readonly endingAt: ReadonlyMap<number, OutlineSide>;
}

export function outlineOf(mesh: QuadraticMesh): Outline {
  const uses = new Int32Array(mesh.nodes);
  for (const n of mesh.node) uses[n] = (uses[n] as number) + 1;
  const startingAt = new Map<number, OutlineSide>();
  const endingAt = new Map<number, OutlineSide>();
  for (let t = 0; t < NODES * mesh.elements; t += NODES) {
    for (let k = 0; k < 3; k++) {
      const middle = mesh.node[t + 3 + k] as number;
      // The middle of a side inside the section belongs to two elements.
      if ((uses[middle] as number) !== 1) continue;
      const from = mesh.node[t + k] as number;
      const to = mesh.node[t + ((k + 1) % 3)] as number;
      const dy = (mesh.y[to] as number) - (mesh.y[from] as number);
      const dz = (mesh.z[to] as number) - (mesh.z[from] as number);
      const length = Math.hypot(dy, dz);
      const side = { from, middle, to, length, y: dy / length, z: dz / length };
      startingAt.set(from, side);
      endingAt.set(to, side);
    }
  }
  return { startingAt, endingAt };
}
