import { HELD, type LaplaceSystem, laplaceSystem, solveLaplace } from "./laplace.ts";
import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
import { gradients, POINTS } from "./shape.ts";

/**
 * Saint-Venant torsion of one mesh, unit twist and unit shear modulus, in mesh units.
 *
 * Any continuous warping function φ gives J ≤ ∫|∇φ + (−z, y)|² dA, and any stress function ψ that vanishes on the outer ring and is
 * constant on each hole gives J ≥ 4(∫ψ dA + Σ ψₖAₖ) − ∫|∇ψ|² dA (Trefftz 1928; Prager & Synge 1947). Both are evaluated as they
 * stand, so the bounds hold however coarse the mesh is.
 */
export interface Torsion {
  readonly low: number;
  readonly high: number;
  /** Warping function φ at the nodes, twist about the mesh's origin. */
  readonly warping: Float64Array;
  /** Stress function ψ at the nodes. */
  readonly stress: Float64Array;
  /** Each element's share of high − low: the square of the difference of both stress fields (hypercircle of Prager & Synge). */
  readonly gap: Float64Array;
}

/** Solves both torsion problems. `holes` are the areas the inner rings enclose, in mesh units. */
export function solveTorsion(
  mesh: QuadraticMesh,
  order: Int32Array,
  neumann: LaplaceSystem,
  holes: readonly number[],
): Torsion {
  const warping = solveLaplace(neumann, warpingLoad(mesh));
  const groups = stressGroups(mesh, holes.length);
  const dirichlet = laplaceSystem(mesh, order, groups.group);
  const load = stressLoad(mesh);
  holes.forEach((area, k) => {
    const node = groups.leader[k + 1] ?? HELD;
    load[node] = (load[node] as number) + 2 * area;
  });
  const stress = solveLaplace(dirichlet, load);
  return { ...bounds(mesh, warping, stress, load), warping, stress };
}

/** ∫(z ∂v/∂y − y ∂v/∂z) dA for every shape function v. */
function warpingLoad(mesh: QuadraticMesh): Float64Array {
  const load = new Float64Array(mesh.nodes);
  const grad = new Float64Array(2 * NODES * POINTS);
  for (let t = 0; t < mesh.elements; t++) {
    gradients(mesh, t, grad);
    const weight = (mesh.area[t] as number) / POINTS;
    for (let p = 0; p < POINTS; p++) {
      const middle = mesh.node[NODES * t + 3 + p] as number;
      const y = mesh.y[middle] as number;
      const z = mesh.z[middle] as number;
      for (let i = 0; i < NODES; i++) {
        const n = mesh.node[NODES * t + i] as number;
        const at = 2 * (NODES * p + i);
        load[n] = (load[n] as number) + weight * (z * (grad[at] as number) - y * (grad[at + 1] as number));
      }
    }
  }
  return load;
}

/** ∫2v dA: a corner shape integrates to nothing, a side shape to a third of the area. */
function stressLoad(mesh: QuadraticMesh): Float64Array {
  const load = new Float64Array(mesh.nodes);
  for (let t = 0; t < mesh.elements; t++) {
    for (let i = 3; i < NODES; i++) {
      const n = mesh.node[NODES * t + i] as number;
      load[n] = (load[n] as number) + (2 * (mesh.area[t] as number)) / 3;
    }
  }
  return load;
}

/** Holds the outer ring at zero and ties the nodes of each hole to its first node. */
function stressGroups(mesh: QuadraticMesh, holes: number): { group: Int32Array; leader: number[] } {
  const leader: number[] = new Array<number>(holes + 1).fill(HELD);
  const group = new Int32Array(mesh.nodes);
  for (let i = 0; i < mesh.nodes; i++) {
    const ring = mesh.ring[i] as number;
    if (ring > 0 && leader[ring] === HELD) leader[ring] = i;
    group[i] = ring < 0 ? i : (leader[ring] ?? HELD);
  }
  return { group, leader };
}

function bounds(mesh: QuadraticMesh, warping: Float64Array, stress: Float64Array, load: Float64Array) {
  const gap = new Float64Array(mesh.elements);
  const grad = new Float64Array(2 * NODES * POINTS);
  let high = 0;
  let energy = 0;
  for (let t = 0; t < mesh.elements; t++) {
    gradients(mesh, t, grad);
    const weight = (mesh.area[t] as number) / POINTS;
    for (let p = 0; p < POINTS; p++) {
      const middle = mesh.node[NODES * t + 3 + p] as number;
      // Shear stress from the warping function, then from the stress function.
      let wy = -(mesh.z[middle] as number);
      let wz = mesh.y[middle] as number;
      let sy = 0;
      let sz = 0;
      for (let i = 0; i < NODES; i++) {
        const n = mesh.node[NODES * t + i] as number;
        const dy = grad[2 * (NODES * p + i)] as number;
        const dz = grad[2 * (NODES * p + i) + 1] as number;
        wy += dy * (warping[n] as number);
        wz += dz * (warping[n] as number);
        sy += dz * (stress[n] as number);
        sz -= dy * (stress[n] as number);
      }
      high += weight * (wy * wy + wz * wz);
      energy += weight * (sy * sy + sz * sz);
      gap[t] = (gap[t] as number) + weight * ((wy - sy) ** 2 + (wz - sz) ** 2);
    }
  }
  let work = 0;
  for (let i = 0; i < mesh.nodes; i++) work += (load[i] as number) * (stress[i] as number);
  return { low: 2 * work - energy, high, gap };
}
