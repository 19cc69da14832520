import type { Bar, FaceChoice, Triple } from "../frame.ts";
import type { FaceName, Pair, Profile, Slot } from "../stock/stock.ts";
import { SAME_PLACE, samePlace } from "./mirror-image.ts";
import { faceMeant, type SectionAxes, sectionAxes } from "./section-axes.ts";
import { plusTimes } from "./vectors.ts";

/**
 * How a section is laid over its mirror image. A mirrored bar keeps from → to, and its axes must be right-handed again: so its section is
 * reflected in its own plane, and only a section that is symmetric that way is its own image.
 */
interface Reflection {
  /** The face that looks where the image of a face looks. */
  readonly faces: Readonly<Record<FaceName, FaceName>>;
  readonly at: (place: Pair) => Pair;
  /** The direction whose image is where face A of the copy looks. */
  readonly tall: (axes: SectionAxes) => Triple;
  /** Whether height and width change places. */
  readonly swaps: boolean;
}

const ZERO: Triple = [0, 0, 0];

/** In this order: face A keeps its place where it can. */
const REFLECTIONS: readonly Reflection[] = [
  { faces: { A: "A", B: "D", C: "C", D: "B" }, at: ([y, z]) => [y, -z], tall: ({ y }) => y, swaps: false },
  {
    faces: { A: "C", B: "B", C: "A", D: "D" },
    at: ([y, z]) => [-y, z],
    tall: ({ y }) => plusTimes(ZERO, y, -1),
    swaps: false,
  },
  { faces: { A: "B", B: "A", C: "D", D: "C" }, at: ([y, z]) => [z, y], tall: ({ z }) => z, swaps: true },
  {
    faces: { A: "D", B: "C", C: "B", D: "A" },
    at: ([y, z]) => [-z, -y],
    tall: ({ z }) => plusTimes(ZERO, z, -1),
    swaps: true,
  },
];

/** What is counted across a face is counted the other way on its image. */
function imageOf(profile: Profile, slot: Slot, { faces }: Reflection): Slot | undefined {
  return profile.slots.find(
    (one) =>
      one.face === faces[slot.face] && Math.abs(one.across + slot.across) < SAME_PLACE && one.closed === slot.closed,
  );
}

function isSymmetric(profile: Profile, reflection: Reflection): boolean {
  if (reflection.swaps && Math.abs(profile.height - profile.width) >= SAME_PLACE) return false;
  return (
    profile.slots.every((slot) => imageOf(profile, slot, reflection) !== undefined) &&
    profile.bores.every((bore) => profile.bores.some((one) => samePlace(one.at, reflection.at(bore.at))))
  );
}

const known = new WeakMap<Profile, Reflection | "none">();

/** How a profile is its own mirror image, by its slots and bores; undefined when it is not. */
export function reflectionOf(profile: Profile): Reflection | undefined {
  let found = known.get(profile);
  if (found === undefined) {
    found = REFLECTIONS.find((one) => isSymmetric(profile, one)) ?? "none";
    known.set(profile, found);
  }
  return found === "none" ? undefined : found;
}

/** The face of a bar's copy that looks where the image of a face looks. */
export function mirroredFace(profile: Profile, face: FaceName): FaceName {
  return reflectionOf(profile)?.faces[face] ?? face;
}

/** The direction whose image is where face A of a bar's copy looks. */
export function mirroredTall(bar: Bar): Triple {
  const axes = sectionAxes(bar);
  return reflectionOf(bar.profile)?.tall(axes) ?? axes.y;
}

function slotCount(profile: Profile, face: FaceName): number {
  return profile.slots.filter((slot) => slot.face === face).length;
}

/** The face whose slots a number counts: the one chosen, else the one with most slots, as only there a number is needed. */
function countedFace(bar: Bar, on: FaceChoice | undefined): FaceName {
  const meant = on === undefined ? undefined : faceMeant(bar, on);
  return meant ?? (slotCount(bar.profile, "B") > slotCount(bar.profile, "A") ? "B" : "A");
}

/** The number that the image of a slot has; a slot that is not there stays not there. */
export function mirroredSlot(bar: Bar, on: FaceChoice | undefined, number: number): number {
  const face = countedFace(bar, on);
  const slot = bar.profile.slots.find((one) => one.face === face && one.number === number);
  const reflection = reflectionOf(bar.profile);
  if (slot === undefined || reflection === undefined) return number;
  return imageOf(bar.profile, slot, reflection)?.number ?? number;
}

/** The number that the image of a bore has; a bore that is not there stays not there. */
export function mirroredBore({ profile }: Bar, number: number): number {
  const bore = profile.bores.find((one) => one.number === number);
  const reflection = reflectionOf(profile);
  if (bore === undefined || reflection === undefined) return number;
  return profile.bores.find((one) => samePlace(one.at, reflection.at(bore.at)))?.number ?? number;
}
