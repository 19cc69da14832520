import { projectOnto } from "../geometry/plane.ts";
import { dot, normalise } from "../geometry/vector.ts";
import type { Frame, Pivot } from "../model/frame.ts";
import { type Body, onFace } from "./bodies.ts";
import type { Contact } from "./contacts.ts";
import { landOn } from "./landing.ts";
import { tiedFaces } from "./place-tie.ts";
import type { ScrewedPart } from "./placed.ts";
import { type FacingFaces, slotToSlot } from "./slot-to-slot.ts";

/** The axis of a pivot counts as square to the faces within this cosine: 3°. */
const SQUARE = Math.cos(Math.PI / 60);

/** The faces that a tie in the place of a pivot draws together; undefined where the bars show each other none square to its axis. */
export function crossedFaces(
  { axis }: Pick<Pivot, "axis">,
  a: Body,
  b: Body,
  touching: readonly Contact[],
): FacingFaces | undefined {
  const faces = tiedFaces(a, b, touching);
  return faces && Math.abs(dot(faces.normal, normalise(axis))) > SQUARE ? faces : undefined;
}

/** The screw of a tie where two bars cross, on the axis they turn about: head in the slot of the first, nut in that of the second. */
export function placeCrossing(
  frame: Frame,
  { ref: joint, part, at, axis }: Pivot,
  a: Body,
  b: Body,
  touching: readonly Contact[],
): readonly ScrewedPart[] {
  const screw = frame.stock.screws.get(part.screw);
  const faces = crossedFaces({ axis }, a, b, touching);
  if (!screw || !faces) return [];
  const mouth = projectOnto({ point: onFace(a, faces.faceA, 0, 0), normal: faces.normal }, at);
  const { slot } = landOn(a, faces.faceA, mouth);
  return [slotToSlot(frame, { id: `${joint.id}/1`, joint, part, screw }, faces, mouth, slot)];
}
