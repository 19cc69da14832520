import type { Region, Ring } from "./polygon.ts";
import type { Vec2 } from "./vector.ts";

/** The grid polygons are snapped to before clipping has this many steps a metre: 1e-6 mm each, far above rounding, far below any cut. */
const PER_METRE = 1e9;

const mapRegion = (region: Region, mapRing: (ring: Ring) => Ring): Region => ({
  outer: mapRing(region.outer),
  holes: region.holes.map(mapRing),
});

/** The region moved by a vector [m]. */
export const translateRegion = (region: Region, by: Vec2): Region =>
  mapRegion(region, (ring) => ring.map(([x, y]): Vec2 => [x + by[0], y + by[1]]));

/** The region turned counter-clockwise about a point by angle [rad]. */
export function rotateRegion(region: Region, angle: number, about: Vec2 = [0, 0]): Region {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turn = ([x, y]: Vec2): Vec2 => {
    const [dx, dy] = [x - about[0], y - about[1]];
    return [about[0] + cos * dx - sin * dy, about[1] + sin * dx + cos * dy];
  };
  return mapRegion(region, (ring) => ring.map(turn));
}

/**
 * The region mirrored in the line through the origin at `angle` [rad] from +x (0 keeps x and flips y). Each ring is reversed as
 * well, so that it still runs the way it did.
 */
export function mirrorRegion(region: Region, angle: number): Region {
  const [cos, sin] = [Math.cos(2 * angle), Math.sin(2 * angle)];
  const flip = ([x, y]: Vec2): Vec2 => [cos * x + sin * y, sin * x - cos * y];
  return mapRegion(region, (ring) => ring.map(flip).reverse());
}

/**
 * The value on the grid of 1e-9 m. Dividing by a whole number gives the double nearest to the decimal; multiplying by 1e-9 would not.
 */
function snap(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError("a polygon point must be a finite number");
  return Math.round(value * PER_METRE) / PER_METRE;
}

/** The ring on the grid, points that fell together dropped; empty where fewer than three are left. Throws RangeError on NaN. */
export function snapRing(ring: Ring): Ring {
  const kept: Vec2[] = [];
  for (const [x, y] of ring) {
    const point: Vec2 = [snap(x), snap(y)];
    const last = kept[kept.length - 1];
    if (last === undefined || last[0] !== point[0] || last[1] !== point[1]) kept.push(point);
  }
  const [first, last] = [kept[0], kept[kept.length - 1]];
  if (kept.length > 1 && first !== undefined && last !== undefined && first[0] === last[0] && first[1] === last[1]) {
    kept.pop();
  }
  return kept.length < 3 ? [] : kept;
}

/** The region on the grid; undefined where nothing of it is left, holes that closed dropped. */
export function snapRegion(region: Region): Region | undefined {
  const outer = snapRing(region.outer);
  if (outer.length === 0) return undefined;
  return { outer, holes: region.holes.map((hole) => snapRing(hole)).filter((hole) => hole.length > 0) };
}
