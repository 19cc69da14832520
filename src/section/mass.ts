import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";

/**
 * Exact ∫NᵢNⱼ dA of a straight six-node triangle in 180ths of its area
 * (O. C. Zienkiewicz & R. L. Taylor, "The finite element method"; products of area coordinates integrate to 2A·i!j!k!/(i+j+k+2)!).
 */
const SHARES = [
  [6, -1, -1, 0, -4, 0],
  [-1, 6, -1, 0, 0, -4],
  [-1, -1, 6, -4, 0, 0],
  [0, 0, -4, 32, 16, 16],
  [-4, 0, 0, 16, 32, 16],
  [0, -4, 0, 16, 16, 32],
].map((row) => Float64Array.from(row, (share) => share / 180));

/** ∫u·v dA for every shape function v, where u is given at the nodes. */
export function massTimes(mesh: QuadraticMesh, u: Float64Array): Float64Array {
  const sums = new Float64Array(mesh.nodes);
  for (let t = 0; t < mesh.elements; t++) {
    SHARES.forEach((row, i) => {
      let sum = 0;
      for (let j = 0; j < NODES; j++) sum += (row[j] as number) * (u[mesh.node[NODES * t + j] as number] as number);
      const n = mesh.node[NODES * t + i] as number;
      sums[n] = (sums[n] as number) + sum * (mesh.area[t] as number);
    });
  }
  return sums;
}

/** Σ uᵢvᵢ. */
export function dot(u: Float64Array, v: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < u.length; i++) sum += (u[i] as number) * (v[i] as number);
  return sum;
}
