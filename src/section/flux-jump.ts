import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
import { gradients, POINTS } from "./shape.ts";

/**
 * Estimated square of the error of ∇u per element, ∫|∇u − recovered|² dA, for a solution with a stress-free outline.
 * Recovered is, in the middle of a side, the mean of both elements' gradients, and on the outline the part along it
 * (after O. C. Zienkiewicz & J. Z. Zhu, Int. J. Numer. Meth. Eng. 24, 1987). An indicator, no bound.
 */
export function fluxJump(mesh: QuadraticMesh, u: Float64Array): Float64Array {
  // Gradient in the middle of each side, element by element, and its sum per node.
  const flux = new Float64Array(2 * POINTS * mesh.elements);
  const sum = new Float64Array(2 * mesh.nodes);
  const uses = new Int32Array(mesh.nodes);
  const grad = new Float64Array(2 * NODES * POINTS);
  for (let t = 0; t < mesh.elements; t++) {
    gradients(mesh, t, grad);
    for (let p = 0; p < POINTS; p++) {
      let dy = 0;
      let dz = 0;
      for (let i = 0; i < NODES; i++) {
        const value = u[mesh.node[NODES * t + i] as number] as number;
        dy += (grad[2 * (NODES * p + i)] as number) * value;
        dz += (grad[2 * (NODES * p + i) + 1] as number) * value;
      }
      const middle = mesh.node[NODES * t + 3 + p] as number;
      flux[2 * (POINTS * t + p)] = dy;
      flux[2 * (POINTS * t + p) + 1] = dz;
      sum[2 * middle] = (sum[2 * middle] as number) + dy;
      sum[2 * middle + 1] = (sum[2 * middle + 1] as number) + dz;
      uses[middle] = (uses[middle] as number) + 1;
    }
  }
  const error = new Float64Array(mesh.elements);
  for (let t = 0; t < mesh.elements; t++) {
    for (let p = 0; p < POINTS; p++) {
      const middle = mesh.node[NODES * t + 3 + p] as number;
      const dy = flux[2 * (POINTS * t + p)] as number;
      const dz = flux[2 * (POINTS * t + p) + 1] as number;
      const squared =
        (uses[middle] as number) === 2
          ? (dy - (sum[2 * middle] as number) / 2) ** 2 + (dz - (sum[2 * middle + 1] as number) / 2) ** 2
          : acrossOutline(mesh, t, p, dy, dz) ** 2;
      error[t] = (error[t] as number) + (squared * (mesh.area[t] as number)) / POINTS;
    }
  }
  return error;
}

/** Part of a vector across side `p` of element `t`. */
function acrossOutline(mesh: QuadraticMesh, t: number, p: number, dy: number, dz: number): number {
  const a = mesh.node[NODES * t + p] as number;
  const b = mesh.node[NODES * t + ((p + 1) % 3)] as number;
  const y = (mesh.y[b] as number) - (mesh.y[a] as number);
  const z = (mesh.z[b] as number) - (mesh.z[a] as number);
  return (dy * z - dz * y) / Math.hypot(y, z);
}
