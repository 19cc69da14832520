import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
import { int, real } from "./read.ts";
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
        const value = real(u, int(mesh.node, NODES * t + i));
        dy += real(grad, 2 * (NODES * p + i)) * value;
        dz += real(grad, 2 * (NODES * p + i) + 1) * value;
      }
      const middle = int(mesh.node, NODES * t + 3 + p);
      flux[2 * (POINTS * t + p)] = dy;
      flux[2 * (POINTS * t + p) + 1] = dz;
      sum[2 * middle] = real(sum, 2 * middle) + dy;
      sum[2 * middle + 1] = real(sum, 2 * middle + 1) + dz;
      uses[middle] = int(uses, middle) + 1;
    }
  }
  const error = new Float64Array(mesh.elements);
  for (let t = 0; t < mesh.elements; t++) {
    for (let p = 0; p < POINTS; p++) {
      const middle = int(mesh.node, NODES * t + 3 + p);
      const dy = real(flux, 2 * (POINTS * t + p));
      const dz = real(flux, 2 * (POINTS * t + p) + 1);
      const squared =
        int(uses, middle) === 2
          ? (dy - real(sum, 2 * middle) / 2) ** 2 + (dz - real(sum, 2 * middle + 1) / 2) ** 2
          : acrossOutline(mesh, t, p, dy, dz) ** 2;
      error[t] = real(error, t) + (squared * real(mesh.area, t)) / POINTS;
    }
  }
  return error;
}

/** Part of a vector across side `p` of element `t`. */
function acrossOutline(mesh: QuadraticMesh, t: number, p: number, dy: number, dz: number): number {
  const a = int(mesh.node, NODES * t + p);
  const b = int(mesh.node, NODES * t + ((p + 1) % 3));
  const y = real(mesh.y, b) - real(mesh.y, a);
  const z = real(mesh.z, b) - real(mesh.z, a);
  return (dy * z - dz * y) / Math.hypot(y, z);
}
