import { cross2, distance2, type Vec2 } from "./vector.ts";

/** A closed polygon [m], the last point not repeated, either way round. */
export type Ring = readonly Vec2[];
/** An area with holes [m]; holes lie inside the outer ring and do not overlap. */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}
export interface Bounds2 {
  readonly min: Vec2;
  readonly max: Vec2;
}
/** Second moments about the axes through the centroid [m⁴]: ix = ∫y² dA, iy = ∫x² dA, ixy = ∫xy dA. */
export interface SecondMoments {
  readonly ix: number;
  readonly iy: number;
  readonly ixy: number;
}

/** Points closer to an edge than this are on it [m]: 1e-6 mm, the grid polygons are snapped to. */
const ON_EDGE = 1e-9;

interface Integrals {
  readonly area: number;
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/**
 * ∫dA, ∫x dA, ∫y dA, ∫x² dA, ∫y² dA, ∫xy dA of a ring about `origin` by Green's theorem, counted positive whichever way the ring
 * runs. Sums over edges as in C. Steger, "On the calculation of arbitrary moments of polygons", TU München 1996.
 */
function integrate(ring: Ring, origin: Vec2): Integrals {
  let [area, x, y, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  let previous = ring[ring.length - 1];
  if (previous === undefined) return { area, x, y, xx, yy, xy };
  for (const current of ring) {
    const [px, py] = [previous[0] - origin[0], previous[1] - origin[1]];
    const [qx, qy] = [current[0] - origin[0], current[1] - origin[1]];
    const twice = px * qy - qx * py;
    area += twice / 2;
    x += (twice * (px + qx)) / 6;
    y += (twice * (py + qy)) / 6;
    xx += (twice * (px * px + px * qx + qx * qx)) / 12;
    yy += (twice * (py * py + py * qy + qy * qy)) / 12;
    xy += (twice * (2 * px * py + px * qy + qx * py + 2 * qx * qy)) / 24;
    previous = current;
  }
  const sign = area < 0 ? -1 : 1;
  return { area: area * sign, x: x * sign, y: y * sign, xx: xx * sign, yy: yy * sign, xy: xy * sign };
}

function integrateRegion(region: Region, origin: Vec2): Integrals {
  const sum = { ...integrate(region.outer, origin) };
  for (const hole of region.holes) {
    const part = integrate(hole, origin);
    sum.area -= part.area;
    sum.x -= part.x;
    sum.y -= part.y;
    sum.xx -= part.xx;
    sum.yy -= part.yy;
    sum.xy -= part.xy;
  }
  return sum;
}

/** Area of a ring [m²], positive when it runs counter-clockwise. */
export function signedArea(ring: Ring): number {
  const first = ring[0];
  let previous = ring[ring.length - 1];
  if (first === undefined || previous === undefined) return 0;
  let twice = 0;
  for (const current of ring) {
    twice += cross2([previous[0] - first[0], previous[1] - first[1]], [current[0] - first[0], current[1] - first[1]]);
    previous = current;
  }
  return twice / 2;
}

/** Area of a region less its holes [m²]. */
export function area(region: Region): number {
  return region.holes.reduce((sum, hole) => sum - Math.abs(signedArea(hole)), Math.abs(signedArea(region.outer)));
}

/** Centroid of a region [m]. Throws RangeError where it has no area. */
export function centroid(region: Region): Vec2 {
  // Moments are taken about a point of the region: far from the global origin the differences would lose digits.
  const origin = region.outer[0] ?? [0, 0];
  const sum = integrateRegion(region, origin);
  if (!(sum.area > 0)) throw new RangeError("a region without area has no centroid");
  return [origin[0] + sum.x / sum.area, origin[1] + sum.y / sum.area];
}

/** Second moments of a region about its centroid [m⁴]. Throws RangeError where it has no area. */
export function secondMoments(region: Region): SecondMoments {
  const sum = integrateRegion(region, centroid(region));
  return { ix: sum.yy, iy: sum.xx, ixy: sum.xy };
}

/** The smallest upright rectangle around a region [m]. Throws RangeError where it has no points. */
export function bounds(region: Region): Bounds2 {
  if (region.outer.length === 0) throw new RangeError("a region without points has no bounds");
  let [xMin, yMin, xMax, yMax] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of region.outer) {
    xMin = Math.min(xMin, x);
    yMin = Math.min(yMin, y);
    xMax = Math.max(xMax, x);
    yMax = Math.max(yMax, y);
  }
  return { min: [xMin, yMin], max: [xMax, yMax] };
}

type Side = "inside" | "edge" | "outside";

/** Side of a ring by counting the edges a ray along +x crosses, the edges themselves first. */
function sideOf(ring: Ring, point: Vec2): Side {
  let inside = false;
  let a = ring[ring.length - 1];
  if (a === undefined) return "outside";
  for (const b of ring) {
    if (distanceToEdge(point, a, b) <= ON_EDGE) return "edge";
    if (a[1] > point[1] !== b[1] > point[1]) {
      const x = a[0] + ((point[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
      if (point[0] < x) inside = !inside;
    }
    a = b;
  }
  return inside ? "inside" : "outside";
}

/** Distance of a point from the edge a-b [m]. */
export function distanceToEdge(point: Vec2, a: Vec2, b: Vec2): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const t = square > 0 ? ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / square : 0;
  const s = Math.min(1, Math.max(0, t));
  return distance2(point, [a[0] + s * dx, a[1] + s * dy]);
}

/** Whether a point lies in a region; its edges, also those of holes, belong to it. */
export function containsPoint(region: Region, point: Vec2): boolean {
  return sideOf(region.outer, point) !== "outside" && region.holes.every((hole) => sideOf(hole, point) !== "inside");
}
