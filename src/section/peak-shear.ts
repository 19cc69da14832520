import { type Outline, type OutlineSide, outlineOf } from "./outline.ts";
import type { QuadraticMesh } from "./quadratic-mesh.ts";

/** A re-entrant corner: its node, and the length of outline on either side over which its stress is averaged, in mesh units. */
export interface NotchedCorner {
  readonly node: number;
  readonly reach: number;
}

/** Distance of the two Gauss points of a side from its middle, in half sides: the derivative of a quadratic fit is sharpest there. */
const GAUSS = 1 / Math.sqrt(3);
/** Sides whose directions differ by less than this sine belong to one straight stretch; grid rounding stays below it. */
const STRAIGHT = 1e-3;

/** Shear along the outline at one place: distance run along the ring, and stress for unit twist and unit modulus. */
interface Sample {
  readonly at: number;
  readonly shear: number;
}

/**
 * Greatest shear stress of torsion for unit twist and unit shear modulus, in mesh units.
 *
 * It occurs on the outline (the squared stress is subharmonic), where it runs along it and is φ's derivative plus the lever about the
 * axis. Between samples of one straight stretch the peak is that of the parabola through three of them. At re-entrant corners the
 * ideal stress peaks, without bound at sharp ones; its mean over `reach` counts there (H. Neuber, "Kerbspannungslehre", Springer:
 * the material answers to a mean).
 */
export function peakShear(mesh: QuadraticMesh, warping: Float64Array, corners: readonly NotchedCorner[]): number {
  const outline = outlineOf(mesh);
  let peak = 0;
  for (const stretch of stretches(mesh, outline, warping, corners)) peak = Math.max(peak, peakOf(stretch));
  for (const { node, reach } of corners) {
    for (const ways of [outline.startingAt, outline.endingAt]) {
      peak = Math.max(peak, Math.abs(meanFrom(mesh, warping, ways, node, reach)));
    }
  }
  return peak;
}

/** Mean shear along the outline from a node over `reach`: the difference of φ, and the levers of the sides passed. */
function meanFrom(
  mesh: QuadraticMesh,
  warping: Float64Array,
  ways: ReadonlyMap<number, OutlineSide>,
  node: number,
  reach: number,
): number {
  let run = 0;
  let levers = 0;
  let at = node;
  for (let side = ways.get(at); side; side = ways.get(at)) {
    const forward = side.from === at;
    const part = Math.min(side.length, reach - run);
    levers += part * leverOf(mesh, side, at);
    if (run + side.length >= reach) {
      const s = (2 * part) / side.length - 1;
      const rise = valueOn(side, warping, forward ? s : -s) - (warping[node] as number);
      return (forward ? rise : -rise) / reach + levers / reach;
    }
    run += side.length;
    at = forward ? side.to : side.from;
  }
  return 0;
}

/** φ at s on a side, from -1 at its start to 1 at its end. */
function valueOn({ from, middle, to }: OutlineSide, warping: Float64Array, s: number): number {
  const [p, q, r] = [warping[from] as number, warping[middle] as number, warping[to] as number];
  return q + (s * (r - p)) / 2 + (s * s * (p - 2 * q + r)) / 2;
}

/** Distance of the line of a side from the axis, positive when the axis is on its left: the shear of a twist without warping. */
const leverOf = (mesh: QuadraticMesh, { y, z }: OutlineSide, node: number): number =>
  (mesh.y[node] as number) * z - (mesh.z[node] as number) * y;

function* stretches(
  mesh: QuadraticMesh,
  { startingAt }: Outline,
  warping: Float64Array,
  corners: readonly NotchedCorner[],
): Iterable<Sample[]> {
  const isNotched = (y: number, z: number) =>
    corners.some(({ node, reach }) => Math.hypot(y - (mesh.y[node] as number), z - (mesh.z[node] as number)) < reach);
  const seen = new Set<number>();
  for (const start of startingAt.keys()) {
    let stretch: Sample[] = [];
    let run = 0;
    let before: OutlineSide | undefined;
    for (let from = start; !seen.has(from); ) {
      seen.add(from);
      const side = startingAt.get(from);
      if (!side) break;
      if (before && Math.abs(before.y * side.z - before.z * side.y) > STRAIGHT) {
        yield stretch;
        stretch = [];
      }
      for (const s of [-GAUSS, GAUSS]) {
        const half = (s * side.length) / 2;
        if (isNotched((mesh.y[side.middle] as number) + half * side.y, (mesh.z[side.middle] as number) + half * side.z))
          continue;
        stretch.push({
          at: run + side.length / 2 + half,
          shear: Math.abs(slopeOn(side, warping, s) + leverOf(mesh, side, from)),
        });
      }
      run += side.length;
      before = side;
      from = side.to;
    }
    yield stretch;
  }
}

/** Derivative of φ along a side at s from -1 to 1. */
function slopeOn({ from, middle, to, length }: OutlineSide, warping: Float64Array, s: number): number {
  const [p, q, r] = [warping[from] as number, warping[middle] as number, warping[to] as number];
  return ((r - p) / 2 + s * (p - 2 * q + r)) / (length / 2);
}

function peakOf(stretch: readonly Sample[]): number {
  let best = 0;
  let index = -1;
  stretch.forEach(({ shear }, i) => {
    if (shear <= best) return;
    best = shear;
    index = i;
  });
  const [a, b, c] = [stretch[index - 1], stretch[index], stretch[index + 1]];
  if (!a || !b || !c) return best;
  const left = (b.shear - a.shear) / (b.at - a.at);
  const right = (c.shear - b.shear) / (c.at - b.at);
  const bend = (right - left) / (c.at - a.at);
  if (!(bend < 0)) return best;
  // Newton's form a + left·(x − a) + bend·(x − a)(x − b), greatest where left + bend·(2x − a − b) = 0.
  const x = (a.at + b.at - left / bend) / 2;
  return x > a.at && x < c.at ? a.shear + left * (x - a.at) + bend * (x - a.at) * (x - b.at) : best;
}
