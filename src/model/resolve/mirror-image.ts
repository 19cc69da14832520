import type { Bar, FaceChoice } from "../frame.ts";
import type { Connector, ConnectorHole, FaceName, JoiningPlate, Pair, Profile } from "../stock/stock.ts";
import { faceMeant } from "./section-axes.ts";

// A mirrored bar keeps from → to and face A; being right-handed again, its face B lies where the image of face D is. So y stays, z
// changes sign, and what is counted across a face is counted the other way.

/** Positions in stock that differ by less are the same. */
const SAME_PLACE = 1e-6; // m

export function mirroredFace(face: FaceName): FaceName {
  return face === "B" ? "D" : face === "D" ? "B" : face;
}

function slotCount(profile: Profile, face: FaceName): number {
  return profile.slots.filter((slot) => slot.face === face).length;
}

/** The face whose slots a number counts: the one chosen, else the one with most slots, as only there a number is needed. */
function countedFace(bar: Bar, on: FaceChoice | undefined): FaceName {
  const meant = on === undefined ? undefined : faceMeant(bar, on);
  return meant ?? (slotCount(bar.profile, "B") > slotCount(bar.profile, "A") ? "B" : "A");
}

/** The number that the image of a slot has; undefined when the profile is not its own mirror image there. */
export function mirroredSlot(bar: Bar, on: FaceChoice | undefined, number: number): number | undefined {
  const face = countedFace(bar, on);
  const slot = bar.profile.slots.find((one) => one.face === face && one.number === number);
  // A slot that is not there is for others to tell; it stays not there.
  if (slot === undefined) return number;
  const image = mirroredFace(face);
  return bar.profile.slots.find((one) => one.face === image && Math.abs(one.across + slot.across) < SAME_PLACE)?.number;
}

/** The number that the image of a bore has. */
export function mirroredBore({ profile }: Bar, number: number): number | undefined {
  const bore = profile.bores.find((one) => one.number === number);
  if (bore === undefined) return number;
  return profile.bores.find((one) => samePlace(one.at, [bore.at[0], -bore.at[1]]))?.number;
}

function samePlace(a: Pair, b: Pair): boolean {
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
