import type { Connector, ConnectorHole, JoiningPlate, Pair } from "../stock/stock.ts";

/** Positions in stock that differ by less are the same. */
export const SAME_PLACE = 1e-6; // m

export function samePlace(a: Pair, b: Pair): boolean {
  return Math.abs(a[0] - b[0]) < SAME_PLACE && Math.abs(a[1] - b[1]) < SAME_PLACE;
}

type Image = (at: Pair) => Pair;

/** The id that each hole's image has, by id; undefined when some image is no hole. */
function mirroredHoles(holes: readonly ConnectorHole[], image: Image): ReadonlyMap<string, string> | undefined {
  const ids = new Map<string, string>();
  for (const hole of holes) {
    const other = holes.find((one) => samePlace(one.at, image(hole.at)));
    if (other === undefined) return undefined;
    ids.set(hole.id, other.id);
  }
  return ids;
}

const ACROSS: Image = ([along, across]) => [along, -across];

/** For a bracket in its mirror image: the ids of its holes' images. */
export function mirroredBracketHoles(part: Connector): ReadonlyMap<string, string> | undefined {
  if (part.kind !== "bracket") return new Map();
  const a = mirroredHoles(part.legs.a.holes, ACROSS);
  const b = mirroredHoles(part.legs.b.holes, ACROSS);
  return a === undefined || b === undefined ? undefined : new Map([...a, ...b]);
}

const QUARTER = Math.PI / 2;

function quarterTurns(times: number): Image {
  const [cosine, sine] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ][times] ?? [1, 0];
  return ([u, v]) => [u * (cosine ?? 1) - v * (sine ?? 0), u * (sine ?? 0) + v * (cosine ?? 1)];
}

/**
 * How a plate must be turned further (rad) to be its own mirror image, u → u and v → −v, without being turned over, and the ids that its
 * holes' images have then. Quarter turns are tried; undefined when none will do.
 */
export function mirroredPlate(
  part: JoiningPlate,
): { readonly turn: number; readonly holes: ReadonlyMap<string, string> } | undefined {
  for (const times of [0, 1, 2, 3]) {
    // A hole at p of the turned plate lies at R p; the image of a hole at q lies at its (u, −v): p = R⁻¹ (u, −v).
    const back = quarterTurns((4 - times) % 4);
    const image: Image = (at) => back(ACROSS(at));
    const outlineFits = part.outline.every((corner) => part.outline.some((one) => samePlace(one, image(corner))));
    const holes = outlineFits ? mirroredHoles(part.holes, image) : undefined;
    if (holes !== undefined) return { turn: times * QUARTER, holes };
  }
  return undefined;
}
