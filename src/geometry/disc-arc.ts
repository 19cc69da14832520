import { type Arc, FULL_TURN, WHOLE, wrap } from "./arc.ts";

/** A disc seen along an axis [m]: how far its middle is from the axis, in which direction [rad], and its radius. */
export interface Disc {
  readonly distance: number;
  readonly bearing: number;
  readonly radius: number;
}

/** The arm may sink this deep into the disc before it counts as blocked [m]: touching is free, and 1e-6 mm is rounding. */
const TOUCHING = 1e-9;

/**
 * The angles at which a flat-ended arm from the axis out to `reach`, `halfWidth` to either side [m], cuts into a disc: closed form.
 * Beside the arm d·sin a = w + ρ; past its end the corner: cos(a − atan(w/R)) = (d² + R² + w² − ρ²) / (2·d·√(R² + w²)). A disc that
 * both corners catch but the middle of the end passes blocks what lies between them too. The whole turn where the disc comes nearer
 * to the axis than half the arm's width; undefined where it is out of reach.
 */
export function discArc(reach: number, halfWidth: number, disc: Disc): Arc | undefined {
  const rho = disc.radius - TOUCHING;
  const d = disc.distance;
  const corner = Math.hypot(reach, halfWidth);
  if (d >= corner + rho) return undefined;
  if (d <= halfWidth + rho) return WHOLE;
  const beside = Math.asin((halfWidth + rho) / d);
  const half =
    d * Math.cos(beside) <= reach
      ? beside
      : Math.atan2(halfWidth, reach) + Math.acos((d * d + corner * corner - rho * rho) / (2 * d * corner));
  const from = wrap(disc.bearing - half);
  return { from, to: from + Math.min(2 * half, FULL_TURN) };
}
