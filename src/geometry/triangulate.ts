import { type Region, type Ring, signedArea } from "./polygon.ts";
import { cross2, subtract2, type Vec2 } from "./vector.ts";

/** A point of the ring being cut, by its place in the list of all points. */
interface Corner {
  readonly index: number;
  readonly at: Vec2;
}

const turn = (a: Vec2, b: Vec2, c: Vec2): number => cross2(subtract2(b, a), subtract2(c, b));

function inTriangle(p: Vec2, a: Vec2, b: Vec2, c: Vec2): boolean {
  return turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;
}

const same = (a: Vec2, b: Vec2): boolean => a[0] === b[0] && a[1] === b[1];

/** Joins a hole to the ring round it by a cut from the hole's rightmost corner to one it sees (D. Eberly, "Triangulation by Ear Clipping"). */
function bridged(ring: readonly Corner[], hole: readonly Corner[]): readonly Corner[] {
  const start = hole.reduce((best, corner, i) => (corner.at[0] > (hole[best]?.at[0] ?? -Infinity) ? i : best), 0);
  const from = hole[start];
  if (!from) return ring;
  // The edge that a ray to the right meets first, and its end further right.
  let [nearest, at] = [Infinity, -1];
  ring.forEach((corner, i) => {
    const next = ring[(i + 1) % ring.length];
    if (!next) return;
    const [a, b] = [corner.at, next.at];
    if (a[1] > from.at[1] || b[1] < from.at[1] || a[1] === b[1]) return;
    const x = a[0] + ((from.at[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
    if (x < from.at[0] || x >= nearest) return;
    nearest = x;
    at = a[0] > b[0] ? i : (i + 1) % ring.length;
  });
  const seen = ring[at];
  if (!seen) throw new RangeError("a hole lies outside its region");
  // A corner inside the triangle between them stands in the way; the one least off the ray is seen instead.
  const meeting: Vec2 = [nearest, from.at[1]];
  let best = { at, lean: Infinity };
  const [p, q] = seen.at[1] >= from.at[1] ? [meeting, seen.at] : [seen.at, meeting];
  ring.forEach((corner, i) => {
    const previous = ring[(i + ring.length - 1) % ring.length];
    const next = ring[(i + 1) % ring.length];
    if (!previous || !next || turn(previous.at, corner.at, next.at) >= 0 || corner.at[0] < from.at[0]) return;
    if (!inTriangle(corner.at, from.at, p, q)) return;
    const lean = Math.abs(corner.at[1] - from.at[1]) / Math.max(corner.at[0] - from.at[0], 1e-15);
    if (lean < best.lean) best = { at: i, lean };
  });
  const round = [...hole.slice(start), ...hole.slice(0, start)];
  const to = ring[best.at];
  return to ? [...ring.slice(0, best.at + 1), ...round, from, ...ring.slice(best.at)] : ring;
}

/** Cuts ears off a ring that runs counter-clockwise and touches itself only along its bridges. */
function clipEars(ring: readonly Corner[]): readonly number[] {
  const left = [...ring];
  const triangles: number[] = [];
  const ear = (i: number, flat: boolean): boolean => {
    const [a, b, c] = [left[(i + left.length - 1) % left.length], left[i], left[(i + 1) % left.length]];
    if (!a || !b || !c) return false;
    const area = turn(a.at, b.at, c.at);
    if (flat ? area < 0 : area <= 0) return false;
    return left.every(
      ({ at }) => same(at, a.at) || same(at, b.at) || same(at, c.at) || !inTriangle(at, a.at, b.at, c.at),
    );
  };
  while (left.length > 3) {
    let i = left.findIndex((_, at) => ear(at, false));
    if (i < 0) i = left.findIndex((_, at) => ear(at, true));
    if (i < 0) throw new RangeError("a ring that crosses itself has no triangles");
    for (const at of [i + left.length - 1, i, i + 1]) triangles.push(left[at % left.length]?.index ?? 0);
    left.splice(i, 1);
  }
  for (const { index } of left) triangles.push(index);
  return triangles;
}

/**
 * A region cut into triangles that fill it exactly: three numbers each, counter-clockwise, counting through the points of the outer
 * ring and then those of the holes in their order. Time grows with the square of the points.
 * Throws RangeError where a ring crosses itself or a hole lies outside.
 */
export function triangulate(region: Region): readonly number[] {
  let offset = 0;
  const corners = (ring: Ring, counterClockwise: boolean): readonly Corner[] => {
    const own = ring.map((at, i) => ({ index: offset + i, at }));
    offset += ring.length;
    return signedArea(ring) > 0 === counterClockwise ? own : own.reverse();
  };
  let ring = corners(region.outer, true);
  const holes = region.holes.map((hole) => corners(hole, false));
  const right = (hole: readonly Corner[]): number => hole.reduce((most, { at }) => Math.max(most, at[0]), -Infinity);
  for (const hole of holes.sort((a, b) => right(b) - right(a))) ring = bridged(ring, hole);
  return clipEars(ring);
}
