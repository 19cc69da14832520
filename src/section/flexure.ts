import { fluxJump } from "./flux-jump.ts";
import { type LaplaceSystem, solveLaplace } from "./laplace.ts";
import { dot, massTimes } from "./mass.ts";
import type { QuadraticMesh } from "./quadratic-mesh.ts";

/** What the flexure problem and the warping function give, in mesh units about the mesh's origin, the centroid. */
export interface Flexure {
  /** Areas that carry a shear force alone with the same energy: V²/(2 G Av). */
  readonly Avy: number;
  readonly Avz: number;
  readonly shearCentre: { readonly y: number; readonly z: number };
  /** ∫ω² dA, ω the warping function for a twist about the shear centre, without mean. */
  readonly Iw: number;
  /** ∫|∇χ|² dA for loads y and z, and its estimated error element by element. */
  readonly energyY: number;
  readonly energyZ: number;
  readonly errorY: Float64Array;
  readonly errorZ: Float64Array;
}

/**
 * Saint-Venant flexure with Poisson's ratio zero: the shear stress ∇χ balances a bending stress that grows along the bar as
 * a·y + b·z, so −∇²χ = a·y + b·z with a stress-free outline, and a, b follow from the shear force
 * (W. D. Pilkey, "Analysis and design of elastic beams", Wiley 2002, ch. 6). The shear centre is Trefftz's (1935).
 */
export function solveFlexure(mesh: QuadraticMesh, neumann: LaplaceSystem, warping: Float64Array): Flexure {
  const loadY = massTimes(mesh, mesh.y);
  const loadZ = massTimes(mesh, mesh.z);
  const chiY = solveLaplace(neumann, loadY);
  const chiZ = solveLaplace(neumann, loadZ);
  const Iz = dot(mesh.y, loadY);
  const Iy = dot(mesh.z, loadZ);
  const Iyz = dot(mesh.y, loadZ);
  const det = Iy * Iz - Iyz * Iyz;
  const energy = (a: number, b: number) =>
    a * a * dot(chiY, loadY) + 2 * a * b * dot(chiY, loadZ) + b * b * dot(chiZ, loadZ);
  const Iyw = dot(warping, loadY);
  const Izw = dot(warping, loadZ);
  const y = (Iyz * Iyw - Iz * Izw) / det;
  const z = (Iy * Iyw - Iyz * Izw) / det;
  return {
    Avy: 1 / energy(Iy / det, -Iyz / det),
    Avz: 1 / energy(-Iyz / det, Iz / det),
    shearCentre: { y, z },
    Iw: warpingConstant(mesh, warping, y, z),
    energyY: dot(chiY, loadY),
    energyZ: dot(chiZ, loadZ),
    errorY: fluxJump(mesh, chiY),
    errorZ: fluxJump(mesh, chiZ),
  };
}

function warpingConstant(mesh: QuadraticMesh, warping: Float64Array, ys: number, zs: number): number {
  const about = warping.map((w, i) => w - zs * (mesh.y[i] as number) + ys * (mesh.z[i] as number));
  const sums = massTimes(mesh, about);
  let area = 0;
  for (const a of mesh.area) area += a;
  let integral = 0;
  for (const s of sums) integral += s;
  return Math.max(0, dot(about, sums) - (integral * integral) / area);
}
