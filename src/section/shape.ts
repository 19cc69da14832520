import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
import { int, real } from "./read.ts";

/**
 * Points of the integration rule: the middles of the sides, equal weights, exact for quadratics
 * (Strang & Fix, "An analysis of the finite element method", 1973, ch. 4). Products of two gradients of quadratic shapes are quadratic.
 */
export const POINTS = 3;

/** Area coordinates of the three points: the middles of sides 01, 12, 20, in the order of the side nodes. */
const AT = [
  [0.5, 0.5, 0],
  [0, 0.5, 0.5],
  [0.5, 0, 0.5],
] as const;

/**
 * Gradients of the six shape functions of element `t` at the three points:
 * `into[12·point + 2·node]` is ∂/∂y, the entry after it ∂/∂z.
 */
export function gradients(mesh: QuadraticMesh, t: number, into: Float64Array): void {
  const n = NODES * t;
  const [a, b, c] = [int(mesh.node, n), int(mesh.node, n + 1), int(mesh.node, n + 2)];
  const twice = 2 * real(mesh.area, t);
  const y0 = (real(mesh.z, b) - real(mesh.z, c)) / twice;
  const y1 = (real(mesh.z, c) - real(mesh.z, a)) / twice;
  const y2 = (real(mesh.z, a) - real(mesh.z, b)) / twice;
  const z0 = (real(mesh.y, c) - real(mesh.y, b)) / twice;
  const z1 = (real(mesh.y, a) - real(mesh.y, c)) / twice;
  const z2 = (real(mesh.y, b) - real(mesh.y, a)) / twice;
  let at = 0;
  for (const [l0, l1, l2] of AT) {
    // Corner shape λ(2λ − 1), side shape 4·λ·λ'.
    into[at++] = (4 * l0 - 1) * y0;
    into[at++] = (4 * l0 - 1) * z0;
    into[at++] = (4 * l1 - 1) * y1;
    into[at++] = (4 * l1 - 1) * z1;
    into[at++] = (4 * l2 - 1) * y2;
    into[at++] = (4 * l2 - 1) * z2;
    into[at++] = 4 * (l0 * y1 + l1 * y0);
    into[at++] = 4 * (l0 * z1 + l1 * z0);
    into[at++] = 4 * (l1 * y2 + l2 * y1);
    into[at++] = 4 * (l1 * z2 + l2 * z1);
    into[at++] = 4 * (l2 * y0 + l0 * y2);
    into[at++] = 4 * (l2 * z0 + l0 * z2);
  }
}
