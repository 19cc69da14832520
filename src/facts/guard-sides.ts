import { areaOf, intersection, union } from "../geometry/clip.ts";
import { convexHull } from "../geometry/convex.ts";
import type { Region } from "../geometry/polygon.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Zone } from "../model/frame.ts";
import { defineFact } from "./fact.ts";
import { type Axis, type GuardPart, guardParts } from "./guard-parts.ts";

/** One plane of a guard between a hazard and the people on that side of it. */
export interface GuardSide {
  readonly axis: Axis;
  /** +1 where people stand towards + of the axis, −1 towards −. */
  readonly sign: 1 | -1;
  /** Where the plane lies along the axis, m. */
  readonly at: number;
  /** Axes of its drawing: across and, on upright sides, up. */
  readonly u: Axis;
  readonly v: Axis;
  /** Bars, panels and shut doors seen square on, m. */
  readonly covers: readonly Region[];
  /** From where to where it ought to close, m: to the planes beside it, from the floor to its top. */
  readonly low: Vec2;
  readonly high: Vec2;
}

export interface Guarding<H extends Hazard = Zone> {
  readonly zone: H;
  readonly sides: readonly GuardSide[];
  /** Sides of the zone on which no bar and no panel stands. */
  readonly open: readonly { readonly axis: Axis; readonly sign: 1 | -1 }[];
  /** Whether sheets lie over the zone. */
  readonly roofed: boolean;
}

/** Parts this near to the plane of a guard belong to it, m: a sheet on the face of a bar does. */
const SLAB = 0.03;
const upright = (axis: Axis): readonly [Axis, Axis] => (axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1]);

/** What hands are kept from: a box, and how badly it hurts. */
export type Hazard = Pick<Zone, "low" | "high" | "risk">;

const extent = (part: GuardPart, axis: Axis): readonly [number, number] => part.bounds[axis] ?? [0, 0];
const middle = (part: GuardPart, axis: Axis): number => (extent(part, axis)[0] + extent(part, axis)[1]) / 2;
const across = (part: GuardPart, axis: Axis): number => extent(part, axis)[1] - extent(part, axis)[0];

/** Widest a bar or sheet may be along the axis to count as lying in a plane square to it, m: the largest profile. */
const THICK = 0.17;

/** What lies in a plane, and bars that run square through it: seen along its axis such a bar is its own section. */
function inPlane(parts: readonly GuardPart[], axis: Axis, at: number): readonly GuardPart[] {
  return parts.filter((part) => {
    const [low, high] = extent(part, axis);
    const through = part.along === axis;
    return low - SLAB <= at && at <= high + SLAB && (across(part, axis) <= THICK || through);
  });
}

function seen(parts: readonly GuardPart[], u: Axis, v: Axis): readonly Region[] {
  return parts.map((part) => ({
    outer: convexHull(part.points.map((point): Vec2 => [point[u], point[v]])),
    holes: [],
  }));
}

/** The plane on one side of the zone in which the most is closed. */
function planeOf(zone: Hazard, parts: readonly GuardPart[], axis: Axis, sign: 1 | -1): number | undefined {
  const face = sign > 0 ? zone.high[axis] : zone.low[axis];
  const [u, v] = upright(axis);
  const planes = new Set<number>();
  for (const part of parts) {
    const at = middle(part, axis);
    if (sign * (at - face) > 0 && across(part, axis) <= THICK) planes.add(Math.round(at * 1e4) / 1e4);
  }
  let best: { at: number; closed: number } | undefined;
  for (const at of [...planes].sort((a, b) => sign * (a - b))) {
    const closed = areaOf(union(seen(inPlane(parts, axis, at), u, v)));
    if (!best || closed > best.closed * 1.001) best = { at, closed };
  }
  return best?.at;
}

function sideOf(
  parts: readonly GuardPart[],
  planes: ReadonlyMap<string, number>,
  axis: Axis,
  sign: 1 | -1,
  floor: number,
): GuardSide | undefined {
  const at = planes.get(`${axis} ${sign}`);
  if (at === undefined) return undefined;
  const [u, v] = upright(axis);
  const own = inPlane(parts, axis, at);
  const from = (along: Axis, end: 0 | 1): number => {
    const beside = planes.get(`${along} ${end === 0 ? -1 : 1}`);
    const reach = own.map((part) => extent(part, along)[end]);
    const edge = end === 0 ? Math.min(...reach) : Math.max(...reach);
    if (along === 2) return end === 0 ? floor : edge;
    return beside ?? edge;
  };
  return {
    axis,
    sign,
    at,
    u,
    v,
    covers: seen(own, u, v),
    low: [from(u, 0), from(v, 0)],
    high: [from(u, 1), from(v, 1)],
  };
}

/** The planes of parts round and over one hazard. */
export function guardingOf<H extends Hazard>(zone: H, parts: readonly GuardPart[], floor: number): Guarding<H> {
  const roof = parts.filter((part) => part.sheet && across(part, 2) < SLAB && extent(part, 2)[0] >= zone.high[2]);
  const over: Region = {
    outer: [
      [zone.low[0], zone.low[1]],
      [zone.high[0], zone.low[1]],
      [zone.high[0], zone.high[1]],
      [zone.low[0], zone.high[1]],
    ],
    holes: [],
  };
  const roofed = areaOf(intersection(seen(roof, 0, 1), [over])) > 0;
  const ways = [
    ...([0, 1] as const).flatMap((axis) => ([-1, 1] as const).map((sign) => ({ axis, sign }))),
    ...(roofed ? [{ axis: 2, sign: 1 } as const] : []),
  ];
  const planes = new Map<string, number>();
  for (const { axis, sign } of ways) {
    const at = planeOf(zone, axis === 2 ? parts.filter((part) => across(part, 2) <= THICK) : parts, axis, sign);
    if (at !== undefined) planes.set(`${axis} ${sign}`, at);
  }
  const sides: GuardSide[] = [];
  const open: { axis: Axis; sign: 1 | -1 }[] = [];
  for (const { axis, sign } of ways) {
    const side = sideOf(parts, planes, axis, sign, floor);
    if (side) sides.push(side);
    else open.push({ axis, sign });
  }
  return { zone, sides, open, roofed };
}

/** For every zone the planes of bars, panels and shut doors round and over it. */
export const guardSides = defineFact<readonly Guarding[], { guardParts: typeof guardParts }>({
  id: "guard-sides",
  needs: { guardParts },
  compute({ guardParts: parts }, frame) {
    if (frame.zones.length === 0) return [];
    return frame.zones.map((zone) => guardingOf(zone, parts, frame.floor.z));
  },
});
