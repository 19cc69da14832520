import type { SharpCorner } from "./corners.ts";
import { NODES, type QuadraticMesh } from "./quadratic-mesh.ts";
import { int, real } from "./read.ts";

/** A stretch of outline left out of the search, in mesh units. */
export type LeftOut = Pick<SharpCorner, "y" | "z"> & { readonly radius: number };

/** Distance of the two Gauss points of a side from its middle, in half sides: the derivative of a quadratic fit is sharpest there. */
const GAUSS = 1 / Math.sqrt(3);
/** Sides whose directions differ by less than this sine belong to one straight stretch; grid rounding stays below it. */
const STRAIGHT = 1e-3;

/** Shear along the outline at one place: distance run along the straight stretch, and stress for unit twist and unit modulus. */
interface Sample {
  readonly at: number;
  readonly shear: number;
}

/**
 * Greatest shear stress of torsion for unit twist and unit shear modulus, in mesh units.
 * It occurs on the outline (the squared stress is subharmonic); there it runs along it and is φ's derivative plus the lever about the
 * axis. Between samples of one straight stretch the peak is that of the parabola through three of them.
 */
export function peakShear(mesh: QuadraticMesh, warping: Float64Array, leftOut: readonly LeftOut[]): number {
  let peak = 0;
  for (const stretch of stretches(mesh, warping, leftOut)) peak = Math.max(peak, peakOf(stretch));
  return peak;
}

function* stretches(mesh: QuadraticMesh, warping: Float64Array, leftOut: readonly LeftOut[]): Iterable<Sample[]> {
  const onwards = outlineSides(mesh);
  const seen = new Set<number>();
  for (const start of onwards.keys()) {
    if (seen.has(start)) continue;
    let stretch: Sample[] = [];
    let run = 0;
    let before: readonly [number, number] | undefined;
    for (let from = start; !seen.has(from); ) {
      seen.add(from);
      const side = onwards.get(from);
      if (!side) break;
      const { middle, to } = side;
      const dy = real(mesh.y, to) - real(mesh.y, from);
      const dz = real(mesh.z, to) - real(mesh.z, from);
      const length = Math.hypot(dy, dz);
      const along = [dy / length, dz / length] as const;
      if (before && Math.abs(before[0] * along[1] - before[1] * along[0]) > STRAIGHT) {
        yield stretch;
        stretch = [];
      }
      before = along;
      for (const s of [-GAUSS, GAUSS]) {
        const y = real(mesh.y, middle) + (s * dy) / 2;
        const z = real(mesh.z, middle) + (s * dz) / 2;
        if (leftOut.some((c) => Math.hypot(y - c.y, z - c.z) < c.radius)) continue;
        const [p, q, r] = [real(warping, from), real(warping, middle), real(warping, to)];
        const slope = ((r - p) / 2 + s * (p - 2 * q + r)) / (length / 2);
        stretch.push({ at: run + ((1 + s) * length) / 2, shear: Math.abs(slope - z * along[0] + y * along[1]) });
      }
      run += length;
      from = to;
    }
    yield stretch;
  }
}

/** For every corner node on the outline, the middle and the end of the side that starts there. */
function outlineSides(mesh: QuadraticMesh): Map<number, { readonly middle: number; readonly to: number }> {
  const uses = new Int32Array(mesh.nodes);
  for (const n of mesh.node) uses[n] = int(uses, n) + 1;
  const sides = new Map<number, { readonly middle: number; readonly to: number }>();
  for (let t = 0; t < NODES * mesh.elements; t += NODES) {
    for (let k = 0; k < 3; k++) {
      const middle = int(mesh.node, t + 3 + k);
      // The middle of a side inside the section belongs to two elements.
      if (int(uses, middle) === 1) sides.set(int(mesh.node, t + k), { middle, to: int(mesh.node, t + ((k + 1) % 3)) });
    }
  }
  return sides;
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
