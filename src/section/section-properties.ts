import type { Region } from "../geometry/polygon.ts";
import { checkRings } from "./check-rings.ts";
import { GRID_REACH, toGrid } from "./grid.ts";
import { type ElasticModuli, elasticModuli, type PlasticModuli, plasticModuli } from "./moduli.ts";
import { type Moments, moments, type PrincipalMoments, principalMoments } from "./moments.ts";
import { solveSection } from "./solve-section.ts";

/**
 * Properties of a prismatic bar's cross-section. The first coordinate of the polygon is y, the second z; with x along the bar,
 * x, y, z are right-handed, so the section is seen from its +x end. Which of them points up is for whoever places the bar.
 */
export interface SectionProperties extends Moments {
  readonly principal: PrincipalMoments;
  readonly elastic: ElasticModuli;
  readonly plastic: PlasticModuli;
  /** Shear area for a shear force along y alone [m²]: energy per length is V²/(2 G Avy). */
  readonly Avy: number;
  /** Shear area for a shear force along z alone [m²]. */
  readonly Avz: number;
  /** Where a shear force causes no twist, in the coordinates of the polygon [m]. */
  readonly shearCentre: { readonly y: number; readonly z: number };
  /** Saint-Venant torsion constant [m⁴]: torque = G J · twist per length. The middle of `torsionBand`. */
  readonly J: number;
  /** Bounds between which J lies [m⁴]. */
  readonly torsionBand: { readonly low: number; readonly high: number };
  /**
   * Torsional modulus [m³]: greatest shear stress = torque / Wt. At re-entrant corners, where the ideal stress peaks or is infinite,
   * its mean over half the wall thickness counts (docs/method/section.md, "Re-entrant corners"). For static strength, not fatigue.
   */
  readonly Wt: number;
  /** Warping constant [m⁶]: ∫ω² dA with ω the Saint-Venant warping function about the shear centre. */
  readonly Iw: number;
  /** Triangles of the mesh the last five entries come from. */
  readonly triangles: number;
}

/**
 * The bounds hold for the polygon as drawn on the grid, whose steps are 6e-8 of half the section's size; this fraction more covers
 * what rounding to it can do to walls down to a thousandth of the size.
 */
const GRID_ALLOWANCE = 1e-6;

/**
 * Properties of any polygonal cross-section with holes [m]. Area, moments and moduli are exact to rounding; J lies within
 * `torsionBand`, as a rule ±0.1 %; the other entries come from the same mesh.
 * Throws RangeError that says what is wrong: too few points, no finite number, no area, rings that cross or touch, a hole outside.
 */
export function sectionProperties(region: Region): SectionProperties {
  const grid = toGrid(region);
  checkRings(grid);
  const exact = moments(region);
  const { centroid } = exact;
  const unit = grid.step * GRID_REACH;
  const solution = solveSection(grid, {
    y: (centroid.y - grid.origin.y) / grid.step,
    z: (centroid.z - grid.origin.z) / grid.step,
    unit: GRID_REACH,
  });
  const J = ((solution.low + solution.high) / 2) * unit ** 4;
  return {
    ...exact,
    principal: principalMoments(exact),
    elastic: elasticModuli(region, exact),
    plastic: plasticModuli(region, exact.A),
    Avy: solution.Avy * unit ** 2,
    Avz: solution.Avz * unit ** 2,
    shearCentre: { y: centroid.y + solution.shearCentre.y * unit, z: centroid.z + solution.shearCentre.z * unit },
    J,
    torsionBand: {
      low: solution.low * unit ** 4 * (1 - GRID_ALLOWANCE),
      high: solution.high * unit ** 4 * (1 + GRID_ALLOWANCE),
    },
    Wt: J / (solution.peak * unit),
    Iw: solution.Iw * unit ** 6,
    triangles: solution.triangles,
  };
}
