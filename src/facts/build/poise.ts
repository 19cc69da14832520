import { boundsOf } from "../../geometry/bounds.ts";
import { convexHull } from "../../geometry/convex.ts";
import { cross2, dot, length2, perpendicularPair, subtract2, type Vec2, type Vec3 } from "../../geometry/vector.ts";

/** Where a piece balances along its longest side, m. */
export interface Balance {
  /** Of the frame: 0 for x, 2 for z. */
  readonly axis: 0 | 1 | 2;
  /** From the lower end of that side. */
  readonly at: number;
  readonly length: number;
}

/** What lies so near to the lowest rests on the floor with it, m. */
const RESTS = 0.005;
/** Tilted by less than this a piece must not fall over, rad: common practice. */
const TILT = (10 * Math.PI) / 180;

/** Undefined of nothing. */
export function balanceOf(vertices: readonly Vec3[], centre: Vec3): Balance | undefined {
  if (vertices.length === 0) return undefined;
  const { min, max } = boundsOf(vertices);
  const axis = ([0, 1, 2] as const).reduce((a, b) => (max[b] - min[b] > max[a] - min[a] + RESTS ? b : a));
  return { axis, at: centre[axis] - min[axis], length: max[axis] - min[axis] };
}

/** Whether a piece put down with its `down` side on the floor stays as it is: its middle is so far inside what it rests on that a small tilt does not throw it. */
export function staysUpright(vertices: readonly Vec3[], centre: Vec3, down: Vec3): boolean {
  const lowest = Math.max(...vertices.map((vertex) => dot(vertex, down)));
  const [u, v] = perpendicularPair(down);
  const flat = (point: Vec3): Vec2 => [dot(point, u), dot(point, v)];
  const ring = convexHull(vertices.filter((vertex) => dot(vertex, down) > lowest - RESTS).map(flat));
  if (ring.length < 3) return false;
  const room = Math.tan(TILT) * (lowest - dot(centre, down));
  const middle = flat(centre);
  return ring.every((from, i) => {
    const edge = subtract2(ring[(i + 1) % ring.length] ?? from, from);
    return cross2(edge, subtract2(middle, from)) / length2(edge) >= room;
  });
}

/** How far a first piece put down with its `down` side must be blocked up so that what is joined to it has room below it, m; 0 where nothing reaches lower. */
export function blockedUp(first: readonly Vec3[], others: readonly Vec3[], down: Vec3): number {
  if (first.length === 0 || others.length === 0) return 0;
  const lowest = (points: readonly Vec3[]): number => Math.max(...points.map((point) => dot(point, down)));
  const reach = lowest(others) - lowest(first);
  return reach > RESTS ? reach : 0;
}

/** The share of its mass that is lifted when a lying frame is stood up about its feet by hands at its top; 1 of nothing. */
export function raisedShare(vertices: readonly Vec3[], centre: Vec3): number {
  if (vertices.length === 0) return 1;
  const { min, max } = boundsOf(vertices);
  // Where what is bolted on hangs down below the bars, there is nothing left to lift.
  return max[2] > min[2] ? Math.max(0, (centre[2] - min[2]) / (max[2] - min[2])) : 1;
}
