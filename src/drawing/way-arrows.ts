import { along, cross, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Band } from "./line-drawing.ts";
import type { View } from "./view.ts";

/** Colour and width [picture units] of the arrows along which something goes in. */
const INK = "#1d4f7a";
const WIDE = 2.5;
/** Of what is shown round a piece: how long an arrow is, how far its tip stays off the middle of what goes in, and the sides of its head. */
const LONG = 0.34;
const OFF = 0.06;
const HEAD = 0.05;
/** Half the angle of a head, as the share of its length that it is wide to each side. */
const SPREAD = 0.45;

function arrow(from: Vec3, to: Vec3, radius: number, { toward }: View, name: string): Band {
  const way = normalise(subtract(to, from));
  // A way straight at the eye has no side: its head is a point then.
  const aside = cross(way, toward);
  const back = along(to, way, -HEAD * radius);
  const wing = (side: number): Vec3 => along(back, aside, side * SPREAD * HEAD * radius);
  return { points: [from, to, wing(1), to, wing(-1)], ink: INK, wide: { units: WIDE }, name };
}

/**
 * Arrows along the legs of a way in, one after the other, the last of them up to the middle of what goes in; `radius` is of what the picture
 * shows, m.
 */
export function wayArrows(middle: Vec3, legs: readonly Vec3[], radius: number, view: View, name: string): Band[] {
  const arrows: Band[] = [];
  let to = middle;
  for (const [i, leg] of [...legs].reverse().entries()) {
    const tip = i === 0 ? along(to, leg, -OFF * radius) : to;
    const from = along(tip, leg, -LONG * radius);
    arrows.unshift(arrow(from, tip, radius, view, name));
    to = from;
  }
  return arrows;
}
