import { type ReentrantCorner, reentrantCorners } from "./corners.ts";
import { type Flexure, solveFlexure } from "./flexure.ts";
import { type Grid, ringArea } from "./grid.ts";
import { eliminationOrder, HELD, laplaceSystem } from "./laplace.ts";
import { peakShear } from "./peak-shear.ts";
import { type MeshFrame, quadraticMesh } from "./quadratic-mesh.ts";
import { refine, type SizeField } from "./refine.ts";
import { solveTorsion } from "./torsion.ts";
import { triangulate } from "./triangulate.ts";

/** Everything the differential equations give, in units of the frame (`MeshFrame`), about the centroid. */
export interface SectionSolution extends Pick<Flexure, "Avy" | "Avz" | "shearCentre" | "Iw"> {
  /** Bounds of the torsion constant. */
  readonly low: number;
  readonly high: number;
  /** Greatest shear stress for unit twist and unit shear modulus, averaged at re-entrant corners. */
  readonly peak: number;
  readonly triangles: number;
}

/** Refinement goes on until the bounds of J lie within this fraction on either side of their middle … */
const AIM = 1e-3;
/** … and the estimated error of the shear energies is below this fraction (the estimate is two to three times too low) … */
const SHEAR_AIM = AIM / 3;
/** … or this many meshes were solved … */
const MOST_MESHES = 8;
/** … or the mesh has this many vertices, five times what detailed sections need; the bounds then stay as wide as they are. */
const MOST_VERTICES = 12_000;

/** Sides are no longer than this, in frame units; eight fit across a section. */
const LONGEST_SIDE = 0.25;
/** Towards a re-entrant corner sides shrink with their distance from it … */
const GRADING = 1.5;
/** … down to this fraction of the room at the corner. */
const FINEST = 0.1;
/** Where there are more corners than this, most matter little, and a coarser start leaves more of the mesh to where it counts. */
const FEW_CORNERS = 100;
const FINEST_OF_MANY = 0.5;

/** The stress at a re-entrant corner is its mean along the outline over this fraction of the room there (see docs/method/section.md). */
const AVERAGED = 0.5;

/** Meshes, solves and refines where both torsion solutions differ most, until the bounds are close. */
export function solveSection(grid: Grid, frame: MeshFrame): SectionSolution {
  const corners = reentrantCorners(grid);
  const holes = grid.rings.slice(1).map((ring) => Math.abs(ringArea(ring)) / frame.unit ** 2);
  const notches = corners.map((c) => ({ node: c.vertex, reach: (AVERAGED * c.room) / frame.unit }));
  const triangulation = triangulate(grid);
  const size = sizeField(corners, frame.unit);
  refine(triangulation, size, [], MOST_VERTICES);
  for (let meshes = 1; ; meshes++) {
    const mesh = quadraticMesh(triangulation, grid, frame);
    const order = eliminationOrder(mesh);
    const neumann = laplaceSystem(mesh, order, heldAtOneNode(order));
    const torsion = solveTorsion(mesh, order, neumann, holes);
    const flexure = solveFlexure(mesh, neumann, torsion.warping);
    const coarse = [
      { total: (torsion.high + torsion.low) / 2, error: torsion.gap, aim: 2 * AIM },
      { total: flexure.energyY, error: flexure.errorY, aim: SHEAR_AIM },
      { total: flexure.energyZ, error: flexure.errorZ, aim: SHEAR_AIM },
    ].filter(({ total, error, aim }) => sum(error) > aim * total);
    if (coarse.length === 0 || meshes === MOST_MESHES || triangulation.vertices >= MOST_VERTICES) {
      const peak = peakShear(mesh, torsion.warping, notches);
      const { Avy, Avz, shearCentre, Iw } = flexure;
      return { Avy, Avz, shearCentre, Iw, low: torsion.low, high: torsion.high, peak, triangles: mesh.elements };
    }
    refine(triangulation, size, worst(mesh.elements, coarse), MOST_VERTICES);
  }
}

/** A quantity that is not yet close: its value, each element's part in its error, and the relative error aimed at. */
interface Coarse {
  readonly total: number;
  readonly error: Float64Array;
  readonly aim: number;
}

/** Elements with more than an even share of half an error aimed at, the worst last, because they are refined first. */
function worst(elements: number, coarse: readonly Coarse[]): number[] {
  const excess = new Float64Array(elements);
  for (const { total, error, aim } of coarse) {
    const share = (aim * total) / 2 / elements;
    for (let t = 0; t < elements; t++) excess[t] = Math.max(excess[t] as number, (error[t] as number) / share);
  }
  const found = Array.from(excess.keys()).filter((t) => (excess[t] as number) > 1);
  return found.sort((a, b) => (excess[a] as number) - (excess[b] as number) || a - b);
}

function sizeField(corners: readonly ReentrantCorner[], unit: number): SizeField {
  const finest = corners.length > FEW_CORNERS ? FINEST_OF_MANY : FINEST;
  return (y, z) => {
    let size = LONGEST_SIDE * unit;
    for (const c of corners) {
      const near = Math.max(GRADING * Math.hypot(y - c.y, z - c.z), finest * c.room);
      if (near < size) size = near;
    }
    return size;
  };
}

/** A warping function is known up to a constant: the node eliminated last is held. */
function heldAtOneNode(order: Int32Array): Int32Array {
  const group = Int32Array.from(order.keys());
  group[order[order.length - 1] as number] = HELD;
  return group;
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
