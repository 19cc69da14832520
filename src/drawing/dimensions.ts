import type { Vec2, Vec3 } from "../geometry/vector.ts";
import { escaped, tidy } from "./svg.ts";

/** A length written into a drawing, with its extension lines (ISO 129-1): from here to there, m. */
export interface Dimension {
  readonly from: Vec3;
  /** The side past which the words stand where there is no room between the arrows. */
  readonly to: Vec3;
  /** The way the dimension line stands off what is measured, and how far, picture units. */
  readonly aside: Vec3;
  readonly off: number;
  readonly words: string;
  /** A length that is wanted, not one that is there: drawn dashed. */
  readonly wanted?: boolean;
}

const INK = "#84230f";
const HEAD = 6;
/** How far extension lines run past the line, and arrows from outside where there is no room within. */
const PAST = 3;
const TAIL = 13;
const LETTER = 6.2;

const plus = ([x, y]: Vec2, [u, v]: Vec2, by: number): Vec2 => [x + u * by, y + v * by];
const at = (point: Vec2): string => point.map(tidy).join(" ");

/** The direction from one point of the picture to another; to the right where they are one. */
function wayTo(a: Vec2, b: Vec2): Vec2 {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return long < 1e-6 ? [1, 0] : [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
}

/** A filled arrowhead whose tip is here and looks this way. */
function head(tip: Vec2, way: Vec2): string {
  const back = plus(tip, way, -HEAD);
  const side: Vec2 = [-way[1], way[0]];
  return `M${at(tip)}L${at(plus(back, side, HEAD / 4))}L${at(plus(back, side, -HEAD / 4))}Z`;
}

function drawn(
  { from, to, aside, off, words, wanted = false }: Dimension,
  place: (point: Vec3) => Vec2,
  width: number,
): string {
  const [a, b] = [place(from), place(to)];
  const out = wayTo(a, place([from[0] + aside[0], from[1] + aside[1], from[2] + aside[2]]));
  const [start, end] = [plus(a, out, off), plus(b, out, off)];
  const way = wayTo(start, end);
  const back: Vec2 = [-way[0], -way[1]];
  const long = Math.hypot(end[0] - start[0], end[1] - start[1]);
  const level = Math.abs(way[0]) > 0.7;
  const within = long > words.length * LETTER + 4 && level;
  const roomy = long > 3 * HEAD;
  const lines = [
    `M${at(a)}L${at(plus(start, out, PAST))}`,
    `M${at(b)}L${at(plus(end, out, PAST))}`,
    roomy ? `M${at(start)}L${at(end)}` : `M${at(plus(start, way, -TAIL))}L${at(plus(end, way, TAIL))}`,
  ].join("");
  const heads = roomy ? head(start, back) + head(end, way) : head(start, way) + head(end, back);
  const past = plus(end, way, (roomy ? 0 : TAIL) + 5);
  const [x, y] = within ? [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2 - 4] : [past[0], past[1] + 4];
  // Words past lines that stand are kept off those of the line beside.
  const outward = wanted === out[0] > 0 ? "start" : "end";
  const anchor = within ? "middle" : level ? (way[0] > 0 ? "start" : "end") : outward;
  const low = within || level ? 0 : way[1] > 0 ? 8 : -6;
  // The edge of the picture cuts no words.
  const wide = words.length * LETTER;
  const left = anchor === "start" ? 0 : anchor === "end" ? wide : wide / 2;
  const kept = Math.max(left + 2, Math.min(x, width - wide + left - 2));
  const dashes = wanted ? ' stroke-dasharray="4 2.5"' : "";
  return (
    `<g data-dimension="${escaped(words)}"><path d="${lines}" fill="none" stroke="${INK}" stroke-width="1"${dashes}/><path d="${heads}" fill="${INK}"/>` +
    `<text x="${tidy(kept)}" y="${tidy(y + low)}" font-family="sans-serif" font-size="11" font-weight="bold" fill="${INK}" text-anchor="${anchor}" stroke="#ffffff" stroke-width="3" paint-order="stroke">${escaped(words)}</text></g>\n`
  );
}

/** Dimensions over a picture of this width. */
export const drawnDimensions = (list: readonly Dimension[], place: (point: Vec3) => Vec2, width: number): string =>
  list.map((one) => drawn(one, place, width)).join("");
