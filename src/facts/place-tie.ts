import { along, dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Frame, Tie } from "../model/frame.ts";
import { ref } from "../model/ref.ts";
import type { FaceName, Screw, Slot } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import type { Contact } from "./contacts.ts";
import { freeChoice } from "./free-choice.ts";
import { landOn } from "./landing.ts";
import { nutScrew } from "./nut-screw.ts";
import type { Bored, InSlot, ScrewedPart } from "./placed.ts";
import { faceDistance } from "./tubes.ts";

/** Where the hole for the key is not given it is so many times as wide as the key: across its corners 1.15, and play. */
const HOLE_FOR_KEY = 1.3;
/** Slot lines count as equally near within this, m. */
const SAME = 1e-6;

/** Width of the hole across the bar of the head, m. */
function tieHole({ part }: Tie, screw: Screw): number {
  return (part.kind === "side-tie" ? part.accessHole : undefined) ?? HOLE_FOR_KEY * screw.key;
}

interface Faces {
  readonly a: Body;
  readonly b: Body;
  readonly faceA: FaceName;
  readonly faceB: FaceName;
  /** Out of a, towards b. */
  readonly normal: Vec3;
}

const isFace = (side: string): side is FaceName => (faceNames as readonly string[]).includes(side);

/** The faces with which two bars look at each other; undefined where they do not lie side by side. */
export function tiedFaces(a: Body, b: Body, touching: readonly Contact[]): Faces | undefined {
  const seen = touching.filter(
    (contact) => contact.b.bar === b.bar.ref.id && isFace(contact.a.side) && isFace(contact.b.side),
  );
  const [first] = seen;
  if (!first) return undefined;
  const most = seen.reduce((p, q) => (q.area > p.area ? q : p), first);
  const [faceA, faceB] = [most.a.side, most.b.side];
  return isFace(faceA) && isFace(faceB) ? { a, b, faceA, faceB, normal: faceNormal(a.axes, faceA) } : undefined;
}

/** From a point on the face of the first bar straight on to the face of the second, m. */
export function gapFrom({ b, faceB, normal }: Faces, point: Vec3): number {
  const facing = faceNormal(b.axes, faceB);
  return dot(subtract(onFace(b, faceB, 0, 0), point), facing) / dot(normal, facing);
}

/** The slot of the first bar whose line meets one of the second best; of equals the one nearest to the middle of the face. */
function slotOf({ a, b, faceA, faceB }: Faces, at: number): Slot | undefined {
  const off = (slot: Slot): number => landOn(b, faceB, onFace(a, faceA, at, slot.across)).off;
  return a.bar.profile.slots
    .filter((slot) => slot.face === faceA)
    .sort((p, q) => {
      const [one, other] = [off(p), off(q)];
      const aside = Number.isFinite(one) && Number.isFinite(other) ? one - other : 0;
      return Math.abs(aside) > SAME ? aside : Math.abs(p.across) - Math.abs(q.across) || p.number - q.number;
    })[0];
}

function screwAt(frame: Frame, tie: Tie, screw: Screw, faces: Faces, at: number, number: number): ScrewedPart {
  const { a, b, faceA, faceB, normal } = faces;
  const connector = ref("connector", `${tie.ref.id}/${number}`);
  const slot = slotOf(faces, at);
  const mouth = onFace(a, faceA, at, slot?.across ?? 0);
  const far = along(mouth, normal, -2 * faceDistance(a, faceA));
  const lip = slot?.lip ?? 0;
  const gap = gapFrom(faces, mouth);
  const choice = freeChoice(frame, screw, [a, b]);
  const [bar, half] = [a.bar.ref.id, screw.headDiameter / 2];
  const head = landOn(a, faceA, mouth);
  const inSlots: InSlot[] = slot
    ? [{ bar, face: faceA, slot: slot.number, by: connector, what: "screw head", from: at - half, to: at + half }]
    : [];
  const hole: Bored = {
    bar,
    by: connector,
    what: "access hole",
    line: { from: far, to: mouth },
    radius: tieHole(tie, screw) / 2,
  };
  const points = [{ point: mouth, axis: normal }];
  return {
    ref: connector,
    joint: tie.ref,
    part: tie.part,
    choice,
    holds: [a, b].map((body) => ({ bar: body.bar.ref.id, screws: points, lugs: false })),
    pieces: [],
    screws: [
      nutScrew({
        joint: tie.ref,
        choice: { ref: connector, screw, nut: choice.nut },
        hole: "a1",
        body: b,
        face: faceB,
        seat: along(mouth, normal, -lip),
        axis: normal,
        grip: lip + gap,
        stock: frame.stock,
        drive: { point: far, axis: normal },
      }),
    ],
    bored: [hole],
    inSlots,
    head,
  };
}

/** The screws of a tie: head behind the lips of its first bar, key through a hole across that bar, nut in the second. */
export function placeTie(
  frame: Frame,
  tie: Tie,
  a: Body,
  b: Body,
  touching: readonly Contact[],
): readonly ScrewedPart[] {
  const screw = frame.stock.screws.get(tie.part.screw);
  const faces = tiedFaces(a, b, touching);
  if (!screw || !faces) return [];
  return tie.at.map((at, i) => screwAt(frame, tie, screw, faces, at, i + 1));
}
