import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";

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
  const [a, b, c] = [mesh.node[n] as number, mesh.node[n + 1] as number, mesh.node[n + 2] as number];
  const twice = 2 * (mesh.area[t] as number);
  const y0 = ((mesh.z[b] as number) - (mesh.z[c] as number)) / twice;
  const y1 = ((mesh.z[c] as number) - (mesh.z[a] as number)) / twice;
  const y2 = ((mesh.z[a] as number) - (mesh.z[b] as number)) / twice;
  const z0 = ((mesh.y[c] as number) - (mesh.y[b] as number)) / twice;
  const z1 = ((mesh.y[a] as number) - (mesh.y[c] as number)) / twice;
  const z2 = ((mesh.y[b] as number) - (mesh.y[a] as number)) / twice;
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
