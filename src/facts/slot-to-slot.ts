import { along, dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Ref, ref } from "../model/ref.ts";
import type { Connector, FaceName, Screw, Slot } from "../model/stock/stock.ts";
import { faceNormal } from "./axes.ts";
import { type Body, onFace } from "./bodies.ts";
import { freeChoice } from "./free-choice.ts";
import { landOn } from "./landing.ts";
import { nutScrew } from "./nut-screw.ts";
import type { Bored, InSlot, ScrewedPart } from "./placed.ts";
import { faceDistance } from "./tubes.ts";

/** Where the hole for the key is not given it is so many times as wide as the key: across its corners 1.15, and play. */
const HOLE_FOR_KEY = 1.3;

/** Width of the hole across the bar of the head, m. */
function keyHole(part: Connector, screw: Screw): number {
  return (part.kind === "side-tie" ? part.accessHole : undefined) ?? HOLE_FOR_KEY * screw.key;
}

/** The faces with which two bars look at each other. */
export interface FacingFaces {
  readonly a: Body;
  readonly b: Body;
  readonly faceA: FaceName;
  readonly faceB: FaceName;
  /** Out of a, towards b. */
  readonly normal: Vec3;
}

/** From a point on the face of the first bar straight on to the face of the second, m. */
export function gapFrom({ b, faceB, normal }: FacingFaces, point: Vec3): number {
  const facing = faceNormal(b.axes, faceB);
  return dot(subtract(onFace(b, faceB, 0, 0), point), facing) / dot(normal, facing);
}

/**
 * A screw from slot to slot: its head behind the lips of the first bar, its key through a hole across that bar, its nut in the second.
 * `mouth` is where it leaves the face of the first bar, m; `slot` the one of that face its head lies in.
 */
export function slotToSlot(
  frame: Frame,
  given: { readonly id: string; readonly joint: Ref; readonly part: Connector; readonly screw: Screw },
  faces: FacingFaces,
  mouth: Vec3,
  slot: Slot | undefined,
): ScrewedPart {
  const { id, joint, part, screw } = given;
  const { a, b, faceA, faceB, normal } = faces;
  const connector = ref("connector", id);
  const far = along(mouth, normal, -2 * faceDistance(a, faceA));
  const lip = slot?.lip ?? 0;
  const gap = gapFrom(faces, mouth);
  const choice = freeChoice(frame, screw, [a, b]);
  const [bar, half] = [a.bar.ref.id, screw.headDiameter / 2];
  const head = landOn(a, faceA, mouth);
  const [from, to] = [head.station - half, head.station + half];
  const inSlots: InSlot[] = slot
    ? [{ bar, face: faceA, slot: slot.number, by: connector, what: "screw head", from, to }]
    : [];
  const hole: Bored = {
    bar,
    by: connector,
    what: "access hole",
    line: { from: far, to: mouth },
    radius: keyHole(part, screw) / 2,
  };
  const points = [{ point: mouth, axis: normal }];
  return {
    ref: connector,
    joint,
    part,
    choice,
    holds: [a, b].map((body) => ({ bar: body.bar.ref.id, screws: points, lugs: false })),
    pieces: [],
    screws: [
      nutScrew({
        joint,
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
