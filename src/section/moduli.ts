import type { Region } from "../geometry/polygon.ts";
import type { Moments } from "./moments.ts";
import { visitBoundary } from "./rings.ts";

/** Elastic section moduli I/c at the four extreme fibres [m³]; stress there is M/W for bending about one section axis alone. */
export interface ElasticModuli {
  /** Iz divided by the distance to the fibre furthest towards +y. */
  readonly yPlus: number;
  /** Iz divided by the distance to the fibre furthest towards -y. */
  readonly yMinus: number;
  /** Iy divided by the distance to the fibre furthest towards +z. */
  readonly zPlus: number;
  /** Iy divided by the distance to the fibre furthest towards -z. */
  readonly zMinus: number;
}

/** Elastic moduli of a region whose moments are known. */
export function elasticModuli(region: Region, { centroid, Iy, Iz }: Moments): ElasticModuli {
  let yPlus = 0;
  let yMinus = 0;
  let zPlus = 0;
  let zMinus = 0;
  for (const [y, z] of region.outer) {
    yPlus = Math.max(yPlus, y - centroid.y);
    yMinus = Math.max(yMinus, centroid.y - y);
    zPlus = Math.max(zPlus, z - centroid.z);
    zMinus = Math.max(zMinus, centroid.z - z);
  }
  return { yPlus: Iz / yPlus, yMinus: Iz / yMinus, zPlus: Iy / zPlus, zMinus: Iy / zMinus };
}

/** Plastic section moduli [m³]: the moment of first yield stress over the whole section, no axial force, axis kept in direction. */
export interface PlasticModuli {
  /** Bending about y: ∫|z − z₀| dA, where z₀ halves the area. */
  readonly y: number;
  /** Bending about z: ∫|y − y₀| dA, where y₀ halves the area. */
  readonly z: number;
}

/** Plastic moduli about both section axes of a region of area `A` [m²]. */
export function plasticModuli(region: Region, A: number): PlasticModuli {
  const edges: Edge[] = [];
  const turned: Edge[] = [];
  visitBoundary(region, (y0, z0, y1, z1) => {
    edges.push({ across: y1 - y0, from: z0, to: z1 });
    turned.push({ across: z0 - z1, from: y0, to: y1 });
  });
  return { y: plasticModulus(edges, A), z: plasticModulus(turned, A) };
}

/** A boundary edge with material on its left: its reach along the bending axis, and its heights over that axis. */
interface Edge {
  readonly across: number;
  readonly from: number;
  readonly to: number;
}

/** Halvings after which a bracket of doubles cannot shrink further. */
const HALVINGS = 200;

function plasticModulus(edges: readonly Edge[], A: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (const { from } of edges) {
    low = Math.min(low, from);
    high = Math.max(high, from);
  }
  // The area below a level only grows with the level, so bisection finds the neutral axis; the modulus is stationary there.
  for (let step = 0; step < HALVINGS; step++) {
    const level = (low + high) / 2;
    if (level <= low || level >= high) break;
    if (areaBelow(edges, level) < A / 2) low = level;
    else high = level;
  }
  return momentAbout(edges, (low + high) / 2);
}

/** Area below a level: −∮ min(h, 0) dy, with h the height over the level; the cut itself adds nothing, because h = 0 on it. */
function areaBelow(edges: readonly Edge[], level: number): number {
  let area = 0;
  for (const { across, from, to } of edges) {
    const a = from - level;
    const b = to - level;
    // Mean of min(h, 0) along an edge whose height runs linearly from a to b.
    let mean = 0;
    if (a <= 0 && b <= 0) mean = (a + b) / 2;
    else if (a < 0) mean = (a * a) / (2 * (a - b));
    else if (b < 0) mean = (b * b) / (2 * (b - a));
    area -= mean * across;
  }
  return area;
}

/** ∫|h| dA = −½∮ h|h| dy over the boundary, material on the left. */
function momentAbout(edges: readonly Edge[], level: number): number {
  let moment = 0;
  for (const { across, from, to } of edges) {
    const a = from - level;
    const b = to - level;
    // Mean of h|h| along the edge: one cubic where the sign stays, two where it changes.
    const mean =
      a * b >= 0
        ? (Math.sign(a + b) * (a * a + a * b + b * b)) / 3
        : (Math.abs(b) ** 3 - Math.abs(a) ** 3) / (3 * (b - a));
    moment -= (mean * across) / 2;
  }
  return moment;
}
