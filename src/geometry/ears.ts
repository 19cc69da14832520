import { type Ring, signedArea } from "./polygon.ts";
import { cross2, subtract2, type Vec2 } from "./vector.ts";

/** Whether c lies left of the way from a to b: positive, and by how much [m²]. */
const turn = (a: Vec2, b: Vec2, c: Vec2): number => cross2(subtract2(b, a), subtract2(c, a));

const inside = (a: Vec2, b: Vec2, c: Vec2, p: Vec2): boolean =>
  turn(a, b, p) > 0 && turn(b, c, p) > 0 && turn(c, a, p) > 0;

/** Whether a ring never turns right: then it is its own only piece. */
function isConvex(ring: Ring): boolean {
  return ring.every((b, i) => {
    const [a, c] = [ring[(i + ring.length - 1) % ring.length], ring[(i + 1) % ring.length]];
    return a === undefined || c === undefined || turn(a, b, c) >= 0;
  });
}

/**
 * A simple polygon [m] as convex pieces that share only edges, each counter-clockwise: itself where it is convex, otherwise triangles
 * by cutting ears (G. Meisters, 1975). Time grows with the cube of the corners: for outlines drawn by hand.
 */
export function convexPieces(outline: Ring): readonly Ring[] {
  const ring = signedArea(outline) < 0 ? [...outline].reverse() : [...outline];
  if (isConvex(ring)) return [ring];
  const pieces: Ring[] = [];
  while (ring.length > 3) {
    const ear = ring.findIndex((b, i) => {
      const [a, c] = [ring[(i + ring.length - 1) % ring.length], ring[(i + 1) % ring.length]];
      return a && c && turn(a, b, c) > 0 && !ring.some((p) => inside(a, b, c, p));
    });
    const at = Math.max(0, ear);
    const [a, b, c] = [ring[(at + ring.length - 1) % ring.length], ring[at], ring[(at + 1) % ring.length]];
    // A corner that does not turn is cut off without a piece.
    if (a && b && c && turn(a, b, c) > 0) pieces.push([a, b, c]);
    ring.splice(at, 1);
  }
  pieces.push(ring);
  return pieces;
}
