import type { Frame, Tie } from "../model/frame.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { faceNames, faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import type { Contact } from "./contacts.ts";
import { landOn } from "./landing.ts";
import type { ScrewedPart } from "./placed.ts";
import { type FacingFaces, slotToSlot } from "./slot-to-slot.ts";

/** Slot lines count as equally near within this, m. */
const SAME = 1e-6;

const isFace = (side: string): side is FaceName => (faceNames as readonly string[]).includes(side);

/** The faces with which two bars look at each other; undefined where they do not lie side by side. */
export function tiedFaces(a: Body, b: Body, touching: readonly Contact[]): FacingFaces | undefined {
  const seen = touching.filter(
    (contact) => contact.b.bar === b.bar.ref.id && isFace(contact.a.side) && isFace(contact.b.side),
  );
  const [first] = seen;
  if (!first) return undefined;
  const most = seen.reduce((p, q) => (q.area > p.area ? q : p), first);
  const [faceA, faceB] = [most.a.side, most.b.side];
  return isFace(faceA) && isFace(faceB) ? { a, b, faceA, faceB, normal: faceNormal(a.axes, faceA) } : undefined;
}

/** The slot of the first bar whose line meets one of the second best; of equals the one nearest to the middle of the face. */
function slotOf({ a, b, faceA, faceB }: FacingFaces, at: number): Slot | undefined {
  const off = (slot: Slot): number => landOn(b, faceB, onFace(a, faceA, at, slot.across)).off;
  return a.bar.profile.slots
    .filter((slot) => slot.face === faceA)
    .sort((p, q) => {
      const [one, other] = [off(p), off(q)];
      const aside = Number.isFinite(one) && Number.isFinite(other) ? one - other : 0;
      return Math.abs(aside) > SAME ? aside : Math.abs(p.across) - Math.abs(q.across) || p.number - q.number;
    })[0];
}

/** The screws of a tie: head behind the lips of its first bar, key through a hole across that bar, nut in the second. */
export function placeTie(
  frame: Frame,
  tie: Tie,
  a: Body,
  b: Body,
  touching: readonly Contact[],
): readonly ScrewedPart[] {
  const { part, ref: joint } = tie;
  const screw = frame.stock.screws.get(part.screw);
  const faces = tiedFaces(a, b, touching);
  if (!screw || !faces) return [];
  return tie.at.map((at, i) => {
    const slot = slotOf(faces, at);
    const mouth = onFace(a, faces.faceA, at, slot?.across ?? 0);
    return slotToSlot(frame, { id: `${joint.id}/${i + 1}`, joint, part, screw }, faces, mouth, slot);
  });
}
