import { difference, intersection } from "../geometry/clip.ts";
import { bounds, containsPoint, type Region, type Ring } from "../geometry/polygon.ts";
import { closestPoints, type Segment } from "../geometry/segment.ts";
import { distance, lerp, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Opening } from "./guard-openings.ts";
import type { GuardSide, Hazard } from "./guard-sides.ts";

const box = (low: Vec2, high: Vec2): Region => ({
  outer: [low, [high[0], low[1]], high, [low[0], high[1]]],
  holes: [],
});

/** What of a side lies open round the place where a rod passes, in the plane of the side, m. */
export function openArea({ place, width }: Opening, side: GuardSide): Region | undefined {
  const { min, max } = bounds(place);
  const half = width / 2;
  const round = box([min[0] - half, min[1] - half], [max[0] + half, max[1] + half]);
  const left = difference([round], side.covers);
  const [inside] = place.outer;
  return left.find((region) => inside && containsPoint(region, inside)) ?? left[0];
}

const flat = ([x, y]: Vec2): Vec3 => [x, y, 0];
const edges = (ring: Ring): readonly Segment[] =>
  ring.map((a, i) => ({ from: flat(a), to: flat(ring[(i + 1) % ring.length] ?? a) }));

/** A point that both cover; undefined where they lie apart. */
function shared(a: Region, b: Region): Vec3 | undefined {
  const [both] = intersection([a], [b]);
  if (!both) return undefined;
  const { min, max } = bounds(both);
  const middle: Vec2 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  return flat(containsPoint(both, middle) ? middle : (both.outer[0] ?? middle));
}

/** A point of a side's plane in space. */
export function onSide({ axis, u, v }: GuardSide, at: number, [across, along]: readonly number[]): Vec3 {
  const point: [number, number, number] = [0, 0, 0];
  point[axis] = at;
  point[u] = across ?? 0;
  point[v] = along ?? 0;
  return point;
}

const faceOf = ({ axis, sign }: GuardSide, zone: Hazard): number => (sign > 0 ? zone.high[axis] : zone.low[axis]);

/** The shortest way from an opening to the zone behind it: as long as the opening's distance. */
export function wayThrough({ place, width }: Opening, side: GuardSide, zone: Hazard): Segment {
  const target = box([zone.low[side.u], zone.low[side.v]], [zone.high[side.u], zone.high[side.v]]);
  const both = shared(place, target);
  const rims = [place.outer, ...place.holes].flatMap(edges);
  const near = rims
    .flatMap((rim) => edges(target.outer).map((edge) => closestPoints(rim, edge)))
    .reduce((a, b) => (b.distance < a.distance ? b : a));
  const [middle, to] = both ? [both, both] : [near.first, near.second];
  // The rod reaches half its width beyond its middle.
  const apart = distance(middle, to);
  const from = apart > 0 ? lerp(middle, to, Math.min(1, width / 2 / apart)) : middle;
  return { from: onSide(side, side.at, from), to: onSide(side, faceOf(side, zone), to) };
}

/** The level way from the top of a side to the zone behind it, at the height of the zone that comes nearest to that top. */
export function wayOver(side: GuardSide, zone: Hazard): Segment {
  const across = (zone.low[side.u] + zone.high[side.u]) / 2;
  const up = Math.min(Math.max(side.high[1], zone.low[side.v]), zone.high[side.v]);
  return { from: onSide(side, side.at, [across, up]), to: onSide(side, faceOf(side, zone), [across, up]) };
}
