import { faceNormal } from "../facts/axes.ts";
import { type Body, bodies } from "../facts/bodies.ts";
import { boredHoles } from "../facts/bored-holes.ts";
import { factOf } from "../facts/fact.ts";
import { alongToCut } from "../facts/landing.ts";
import { placements } from "../facts/placements.ts";
import { plateEdges } from "../facts/plate-edges.ts";
import { screwedParts } from "../facts/screwed-parts.ts";
import { nearestAlong } from "../geometry/segment.ts";
import { add, along, distance, dot, lerp, normalise, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";

/** A hole or nut that lies near an edge: its middle on the face it is seen on, m, and the edge. */
export interface EdgePlace {
  /** The bar or connector whose edge it is. */
  readonly of: string;
  readonly at: Vec3;
  /** Out of the face, along what lies there, and square on to the edge; unit vectors. */
  readonly eye: Vec3;
  readonly toward: Vec3;
  /** From the middle to the edge, negative beyond it, m. */
  readonly distance: number;
  /** Of the hole or screw, m. */
  readonly radius: number;
  /** Of the nut, along the slot and across it, m. */
  readonly nut?: readonly [number, number];
}

/** From a point on a bar the way to its nearer cut end. */
function toEnd(body: Body, at: Vec3): Pick<EdgePlace, "toward" | "distance"> {
  const [from, to] = [alongToCut(body, "from", at), alongToCut(body, "to", at)];
  return from <= to ? { toward: scale(body.axes.x, -1), distance: from } : { toward: body.axes.x, distance: to };
}

/** The hole of this part that is so far from its cut end, m. */
export function holeNearEnd(frame: Frame, by: string, measured: number): EdgePlace | undefined {
  const near = factOf(boredHoles, frame).edges.find((one) => one.hole.by.id === by && one.toEnd === measured);
  const body = near && factOf(bodies, frame).get(near.bar);
  if (!near || !body) return undefined;
  const { line, radius } = near.hole;
  const eye = normalise(subtract(line.from, line.to));
  return { of: near.bar, at: line.from, eye, radius, ...toEnd(body, line.from) };
}

/** The nut of a screw in its slot. */
export function nutNearEnd(frame: Frame, screw: string): EdgePlace | undefined {
  const own = factOf(screwedParts, frame)
    .all.flatMap(({ screws }) => screws)
    .find(({ ref }) => ref.id === screw);
  if (own?.into.kind !== "nut") return undefined;
  const { landing, nut } = own.into;
  const body = factOf(bodies, frame).get(landing.bar);
  if (!body) return undefined;
  return {
    of: landing.bar,
    at: landing.point,
    eye: faceNormal(body.axes, landing.face),
    radius: own.screw.diameter / 2,
    ...toEnd(body, landing.point),
    ...(nut ? { nut: [nut.length, nut.width] as const } : {}),
  };
}

/** The hole of a plate that a screw goes through. */
export function plateHoleNearEdge(frame: Frame, screw: string): EdgePlace | undefined {
  const edge = factOf(plateEdges, frame).find((one) => one.screw.id === screw);
  const plate = factOf(placements, frame).connectors.find(({ screws }) => screws.some(({ ref }) => ref.id === screw));
  const seat = plate?.screws.find(({ ref }) => ref.id === screw)?.seat;
  if (!edge || !plate?.outline || !seat) return undefined;
  const { ring, normal } = plate.outline;
  const [first] = ring;
  if (!first) return undefined;
  const at = along(seat, normal, dot(subtract(first, seat), normal));
  const nearest = ring
    .map((a, i): Vec3 => {
      const segment = { from: a, to: ring[(i + 1) % ring.length] ?? a };
      return lerp(segment.from, segment.to, nearestAlong(segment, at));
    })
    .reduce((a, b) => (distance(b, at) < distance(a, at) ? b : a));
  if (distance(nearest, at) < 1e-9) return undefined;
  const toward = normalise(subtract(nearest, at));
  return { of: plate.ref.id, at, eye: normal, toward, distance: edge.distance, radius: edge.diameter / 2 };
}

/** A point beside another in its face, m along the way to the edge and square to it. */
export function inFace({ at, eye, toward }: EdgePlace, ahead: number, aside: number): Vec3 {
  const side: Vec3 = [
    eye[1] * toward[2] - eye[2] * toward[1],
    eye[2] * toward[0] - eye[0] * toward[2],
    eye[0] * toward[1] - eye[1] * toward[0],
  ];
  return add(along(at, toward, ahead), scale(side, aside));
}
