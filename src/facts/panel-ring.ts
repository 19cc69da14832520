import { add, cross, dot, midpoint, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { PanelEdge } from "../model/frame.ts";
import { type Body, cutPoint } from "./bodies.ts";

/** The bars round a panel in order; undefined for a free side. */
export type EdgeRing = readonly (Body | undefined)[];

/** Bars whose directions lie within this cosine of each other run the same way: 10°. */
const ALONGSIDE = Math.cos(Math.PI / 18);

const alongside = (a: Body, b: Body): boolean => Math.abs(dot(a.axes.x, b.axes.x)) > ALONGSIDE;

/**
 * The sides of a panel in order round it. Two or three bars of which two run alongside each other bound a rectangle whose
 * other sides are free, also where its author left those out.
 */
export function edgeRing(edges: readonly PanelEdge[], bodies: ReadonlyMap<string, Body>): EdgeRing {
  const ring: (Body | undefined)[] = edges.map((edge) => (edge.kind === "bar" ? bodies.get(edge.bar) : undefined));
  const [a, b, c] = ring;
  if (ring.length === 2 && a && b) return alongside(a, b) ? [a, undefined, b, undefined] : [a, b, undefined, undefined];
  if (ring.length === 2) return [a, b, undefined, undefined];
  if (ring.length === 3 && a && b && c) {
    if (alongside(c, a)) return [a, b, c, undefined];
    if (alongside(a, b)) return [a, undefined, b, c];
    if (alongside(b, c)) return [a, b, undefined, c];
  }
  if (ring.length === 3 && !(a && b && c)) return [...ring, undefined];
  return ring;
}

/** Where the lines of two bars pass each other, seen along the normal; undefined where they run alongside. */
function crossingOf(a: Body, b: Body, normal: Vec3): Vec3 | undefined {
  if (alongside(a, b)) return undefined;
  const across = cross(normal, b.axes.x);
  const t = dot(subtract(b.bar.from, a.bar.from), across) / dot(a.axes.x, across);
  return add(a.bar.from, scale(a.axes.x, t));
}

const middleOf = (body: Body): Vec3 => midpoint(cutPoint(body, "from"), cutPoint(body, "to"));

/** A point on the panel's side of a bar. */
function pointInside(ring: EdgeRing, body: Body, normal: Vec3): Vec3 {
  const own = ring.indexOf(body);
  const opposite = ring.length === 4 ? ring[(own + 2) % 4] : undefined;
  if (opposite && alongside(opposite, body)) return middleOf(opposite);
  const corners = ring.flatMap((side, i) => {
    const next = ring[(i + 1) % ring.length];
    const corner = side && next && crossingOf(side, next, normal);
    return corner ? [corner] : [];
  });
  const others = ring.filter((side) => side !== undefined && side !== body) as readonly Body[];
  const points = corners.length === ring.length ? corners : others.map(middleOf);
  return scale(points.reduce(add, [0, 0, 0]), 1 / Math.max(1, points.length));
}

/**
 * The direction in the panel's plane, square to a bar, that looks into the panel: towards the bar opposite, else towards
 * the middle of its corners, else to the side where the bars beside it reach further.
 */
export function inwardOf(ring: EdgeRing, body: Body, normal: Vec3): Vec3 {
  const square = normalise(cross(normal, body.axes.x));
  const way = dot(subtract(pointInside(ring, body, normal), body.bar.from), square);
  return way < 0 ? scale(square, -1) : square;
}
