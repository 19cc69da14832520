import { factOf } from "../facts/fact.ts";
import { guardReach, type SideReach, sideName } from "../facts/guard-reach.ts";
import { onSide, openArea, wayOver, wayThrough } from "../facts/guard-way.ts";
import type { Segment } from "../geometry/segment.ts";
import { triangulate } from "../geometry/triangulate.ts";
import type { Vec2, Vec3 } from "../geometry/vector.ts";
import type { Frame, Zone } from "../model/frame.ts";

/** A zone, the side of its guard on which people reach it, and the shortest way there, as they lie in space, m. */
export interface GuardSign {
  readonly zone: Zone;
  /** Outline of what lies open, or of the side that is too low: a ring, and those of what stands in it. */
  readonly open: readonly (readonly Vec3[])[];
  /** Corners of triangles over it. */
  readonly filled: readonly Vec3[];
  /** Undefined where nothing stands in the way. */
  readonly way: Segment | undefined;
  /** From the zone to the people there. */
  readonly out: Vec3;
}

interface Region {
  readonly outer: readonly Vec2[];
  readonly holes: readonly (readonly Vec2[])[];
}

const rectangle = (low: Vec2, high: Vec2): Region => ({
  outer: [low, [high[0], low[1]], high, [low[0], high[1]]],
  holes: [],
});

/** Corners of triangles over a region; none where its rings touch so that no triangles fill it: its outline has to do then. */
function filling(region: Region): readonly number[] {
  try {
    return triangulate(region);
  } catch {
    return [];
  }
}

function outOf(axis: 0 | 1 | 2, sign: 1 | -1): Vec3 {
  const out: [number, number, number] = [0, 0, 0];
  out[axis] = sign;
  return out;
}

function signOn(zone: Zone, { plane, through, over }: SideReach, key: string): GuardSign | undefined {
  const low = key === "over" || key === "low";
  if (low ? !over : !through) return undefined;
  const region = low || !through ? rectangle(plane.low, plane.high) : openArea(through, plane);
  if (!region) return undefined;
  const lifted = (ring: readonly Vec2[]): readonly Vec3[] => ring.map((point) => onSide(plane, plane.at, point));
  const corners = [region.outer, ...region.holes].flatMap(lifted);
  return {
    zone,
    open: [region.outer, ...region.holes].map(lifted),
    filled: filling(region).flatMap((i) => corners.slice(i, i + 1)),
    way: low || !through ? wayOver(plane, zone) : wayThrough(through, plane, zone),
    out: outOf(plane.axis, plane.sign),
  };
}

/** The face of a zone before which nothing stands. */
function bareSign(zone: Zone, name: string): GuardSign | undefined {
  for (const axis of [0, 1, 2] as const)
    for (const sign of [1, -1] as const) {
      if (sideName({ axis, sign }) !== name) continue;
      const at = sign > 0 ? zone.high[axis] : zone.low[axis];
      const [u, v] = axis === 0 ? ([1, 2] as const) : axis === 1 ? ([0, 2] as const) : ([0, 1] as const);
      const corner = ([x, y]: Vec2): Vec3 => {
        const point: [number, number, number] = [at, at, at];
        [point[u], point[v]] = [x, y];
        return point;
      };
      const face = rectangle([zone.low[u], zone.low[v]], [zone.high[u], zone.high[v]]);
      const ring = face.outer.map(corner);
      const filled = triangulate(face).flatMap((i) => ring.slice(i, i + 1));
      return { zone, open: [ring], filled, way: undefined, out: outOf(axis, sign) };
    }
  return undefined;
}

/** What a finding of guard.within-reach on a zone is about: its message, and the name of the side as it says it. */
export function guardSign(frame: Frame, zone: string, key: string, side: string): GuardSign | undefined {
  const reach = factOf(guardReach, frame).find((one) => one.zone.ref.id === zone);
  if (!reach) return undefined;
  if (key === "bare") return bareSign(reach.zone, side);
  const own = reach.sides.find(({ name }) => name === side);
  return own && signOn(reach.zone, own, key);
}
