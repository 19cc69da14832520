import type { OrientedBox } from "./box.ts";
import { along, cross, distance, dot, length, lerp, subtract, type Vec3 } from "./vector.ts";

/** A straight piece between two points [m]; both may be the same point. */
export interface Segment {
  readonly from: Vec3;
  readonly to: Vec3;
}

/** The nearest points of two bodies, how far each lies along its segment (0 at from, 1 at to), and the distance [m]. */
export interface ClosestPoints {
  readonly first: Vec3;
  readonly second: Vec3;
  readonly s: number;
  readonly t: number;
  readonly distance: number;
}

const clamp = (value: number): number => Math.min(1, Math.max(0, value));

/** How far along a segment (0 to 1) it comes nearest to a point. */
export function nearestAlong(segment: Segment, point: Vec3): number {
  const d = subtract(segment.to, segment.from);
  const square = dot(d, d);
  return square > 0 ? clamp(dot(subtract(point, segment.from), d) / square) : 0;
}

/** Distance of a point from a segment [m]. */
export const pointToSegment = (point: Vec3, segment: Segment): number =>
  distance(point, lerp(segment.from, segment.to, nearestAlong(segment, point)));

/**
 * The nearest points of two segments: the nearest pair of their lines, held to the segments, against the four ends. Cross products
 * keep the digits that uu·vv − uv² loses between nearly parallel segments. Of equally near pairs (parallel segments) the first
 * found stands: an end.
 */
export function closestPoints(a: Segment, b: Segment): ClosestPoints {
  const pair = (s: number, t: number): ClosestPoints => {
    const [first, second] = [lerp(a.from, a.to, s), lerp(b.from, b.to, t)];
    return { first, second, s, t, distance: distance(first, second) };
  };
  const pairs = [
    pair(0, nearestAlong(b, a.from)),
    pair(1, nearestAlong(b, a.to)),
    pair(nearestAlong(a, b.from), 0),
    pair(nearestAlong(a, b.to), 1),
  ];
  const [u, v, w] = [subtract(a.to, a.from), subtract(b.to, b.from), subtract(a.from, b.from)];
  const normal = cross(u, v);
  const square = dot(normal, normal);
  if (square > 0) {
    // From a.from + s·u − b.from − t·v along normal: take the cross product with v, and with u.
    pairs.push(pair(clamp(dot(cross(v, w), normal) / square), clamp(dot(cross(u, w), normal) / square)));
  }
  return pairs.reduce((best, next) => (next.distance < best.distance ? next : best));
}

/** Distance between two segments [m]. */
export const segmentDistance = (a: Segment, b: Segment): number => closestPoints(a, b).distance;

/** A point in the axes of a box, from its centre [m]. */
function inBox(box: OrientedBox, point: Vec3): Vec3 {
  const d = subtract(point, box.centre);
  return [dot(d, box.axes[0]), dot(d, box.axes[1]), dot(d, box.axes[2])];
}

/** How far a point given in the box's axes sticks out of it along each of them [m]. */
const outside = (box: OrientedBox, p: Vec3): Vec3 => [
  Math.max(0, Math.abs(p[0]) - box.half[0]),
  Math.max(0, Math.abs(p[1]) - box.half[1]),
  Math.max(0, Math.abs(p[2]) - box.half[2]),
];

/**
 * Distance between a segment and a box [m], 0 where they meet. Along the segment the squared distance is convex and made of
 * parabolas that join where the segment crosses a plane of the box; each piece has its least value in closed form.
 */
export function segmentToBox(segment: Segment, box: OrientedBox): number {
  const [p, q] = [inBox(box, segment.from), inBox(box, segment.to)];
  const d = subtract(q, p);
  const stops = [0, 1];
  for (const axis of [0, 1, 2] as const) {
    for (const side of [-1, 1]) {
      const t = (side * box.half[axis] - p[axis]) / d[axis];
      if (t > 0 && t < 1) stops.push(t);
    }
  }
  stops.sort((a, b) => a - b);
  let least = Infinity;
  let start = 0;
  for (const end of stops) {
    const t = lowestOfPiece(box, p, d, start, end);
    for (const at of [start, t, end]) least = Math.min(least, length(outside(box, along(p, d, at))));
    start = end;
  }
  return least;
}

/** Where between two stops the parabola has its least value; on a piece the axes that stick out stay the same. */
function lowestOfPiece(box: OrientedBox, p: Vec3, d: Vec3, start: number, end: number): number {
  const middle = along(p, d, (start + end) / 2);
  let [slope, curve] = [0, 0];
  for (const axis of [0, 1, 2] as const) {
    if (Math.abs(middle[axis]) <= box.half[axis]) continue;
    const face = Math.sign(middle[axis]) * box.half[axis];
    slope += (p[axis] - face) * d[axis];
    curve += d[axis] * d[axis];
  }
  return curve > 0 ? Math.min(end, Math.max(start, -slope / curve)) : start;
}

/**
 * Clearance between a round rod with round ends (a segment thickened by `radius` [m]) and a box [m]: negative where it dips in,
 * down to −radius once the segment itself meets the box.
 */
export const capsuleToBox = (segment: Segment, radius: number, box: OrientedBox): number =>
  segmentToBox(segment, box) - radius;
