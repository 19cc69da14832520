import { area, centroid, type Region, secondMoments } from "../geometry/polygon.ts";

/** Moments of a cross-section about its own centroid, exact for polygons (Green's theorem). */
export interface Moments {
  /** Area [m²]. */
  readonly A: number;
  /** Centroid, in the coordinates of the polygon [m]. */
  readonly centroid: { readonly y: number; readonly z: number };
  /** ∫z² dA [m⁴]: bending about y. */
  readonly Iy: number;
  /** ∫y² dA [m⁴]: bending about z. */
  readonly Iz: number;
  /** ∫yz dA [m⁴]. */
  readonly Iyz: number;
}

/** Principal second moments of area and the direction of the first principal axis. */
export interface PrincipalMoments {
  /** Greater principal moment [m⁴]. */
  readonly I1: number;
  /** Smaller principal moment [m⁴]. */
  readonly I2: number;
  /** Angle from +y towards +z of the axis about which the moment is I1, in (-π/2, π/2] [rad]; 0 when every axis is principal. */
  readonly angle: number;
}

/** Two principal moments closer than this fraction of their mean count as equal: their axes would be rounding noise. */
const ROUNDING = 1e-12;

/** Area, centroid and centroidal second moments; the first polygon coordinate is y, the second z. */
export function moments(region: Region): Moments {
  const [y, z] = centroid(region);
  const { ix, iy, ixy } = secondMoments(region);
  return { A: area(region), centroid: { y, z }, Iy: ix, Iz: iy, Iyz: ixy };
}

/** Principal moments from centroidal ones (Mohr's circle). */
export function principalMoments({ Iy, Iz, Iyz }: Moments): PrincipalMoments {
  const mean = (Iy + Iz) / 2;
  const half = (Iy - Iz) / 2;
  const radius = Math.hypot(half, Iyz);
  if (radius <= ROUNDING * mean) return { I1: mean, I2: mean, angle: 0 };
  // About an axis turned by a from +y: I(a) = mean + half·cos 2a − Iyz·sin 2a, greatest where 2a = atan2(−Iyz, half).
  // Noise in Iyz must not turn +π/2 into −π/2.
  const product = Math.abs(Iyz) <= ROUNDING * mean ? 0 : -Iyz;
  return { I1: mean + radius, I2: mean - radius, angle: Math.atan2(product, half) / 2 };
}
