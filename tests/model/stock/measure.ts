import type { Pair, Profile, Slot } from "../../../src/model/stock/stock.ts";

/** Measures taken on the polygons alone, by ways other than those that made them. Metres. */

export function areaOf({ outer, holes }: Profile["region"]): number {
  return Math.abs(shoelace(outer)) - holes.reduce((sum, hole) => sum + Math.abs(shoelace(hole)), 0);
}

function shoelace(ring: readonly Pair[]): number {
  return ring.reduce((sum, [y, z], i) => {
    const [nextY, nextZ] = ring[(i + 1) % ring.length] ?? [y, z];
    return sum + (y * nextZ - nextY * z) / 2;
  }, 0);
}

/** Second moment about the z axis through the middle, ∫ y² dA, by Green's theorem. */
export function secondMomentOf({ outer, holes }: Profile["region"]): number {
  const ring = (points: readonly Pair[]) =>
    Math.abs(
      points.reduce((sum, [y, z], i) => {
        const [y2, z2] = points[(i + 1) % points.length] ?? [y, z];
        return sum + ((y * z2 - y2 * z) * (y * y + y * y2 + y2 * y2)) / 12;
      }, 0),
    );
  return ring(outer) - holes.reduce((sum, hole) => sum + ring(hole), 0);
}

function wound(ring: readonly Pair[], [y, z]: Pair): boolean {
  let turns = 0;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    turns += Math.atan2(
      (a[0] - y) * (b[1] - z) - (a[1] - z) * (b[0] - y),
      (a[0] - y) * (b[0] - y) + (a[1] - z) * (b[1] - z),
    );
  });
  return Math.abs(turns) > Math.PI;
}

export function inMaterial(region: Profile["region"], point: Pair): boolean {
  return wound(region.outer, point) && !region.holes.some((hole) => wound(hole, point));
}

/** [along the face in counting order, depth] of a face brought into the section. */
export function fromFace(profile: Profile, face: Slot["face"], s: number, d: number): Pair {
  const y = profile.height / 2;
  const z = profile.width / 2;
  if (face === "A") return [y - d, s];
  if (face === "B") return [-s, z - d];
  if (face === "C") return [-y + d, -s];
  return [s, -z + d];
}

/** Length of the stretch round `from` (a parameter between low and high) whose points answer like `from`, by bisection to 1e-9 m. */
export function stretch(answer: (at: number) => boolean, from: number, low: number, high: number): number {
  const wanted = answer(from);
  const edge = (limit: number): number => {
    const step = (limit - from) / 400;
    let last = from;
    for (let i = 1; i <= 400; i++) {
      const next = from + i * step;
      if (answer(next) !== wanted) return bisect(last, next);
      last = next;
    }
    return limit;
  };
  const bisect = (same: number, other: number): number => {
    let [a, b] = [same, other];
    while (Math.abs(b - a) > 1e-9) {
      const middle = (a + b) / 2;
      if (answer(middle) === wanted) a = middle;
      else b = middle;
    }
    return (a + b) / 2;
  };
  return edge(high) - edge(low);
}

/** Every pair of edges that are no neighbours, looked at one by one: true when none meet. */
export function isSimple(rings: readonly (readonly Pair[])[]): boolean {
  const edges = rings.flatMap((ring, r) =>
    ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length] ?? from, r, i, n: ring.length })),
  );
  return edges.every((a, i) =>
    edges.slice(i + 1).every((b) => {
      const gap = Math.abs(a.i - b.i);
      if (a.r === b.r && (gap === 1 || gap === a.n - 1)) return true;
      return !meet(a.from, a.to, b.from, b.to);
    }),
  );
}

/** Whether two segments share a point, by solving for the parameters of their lines. */
function meet(p: Pair, p2: Pair, q: Pair, q2: Pair): boolean {
  const [rx, ry] = [p2[0] - p[0], p2[1] - p[1]];
  const [sx, sy] = [q2[0] - q[0], q2[1] - q[1]];
  const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
  const det = rx * sy - ry * sx;
  if (Math.abs(det) < 1e-18) {
    if (Math.abs(dx * ry - dy * rx) > 1e-15) return false;
    const length = rx * rx + ry * ry;
    const t0 = (dx * rx + dy * ry) / length;
    const t1 = t0 + (sx * rx + sy * ry) / length;
    return Math.max(t0, t1) >= 0 && Math.min(t0, t1) <= 1;
  }
  const t = (dx * sy - dy * sx) / det;
  const u = (dx * ry - dy * rx) / det;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1;
}
