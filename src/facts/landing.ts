import { dot, subtract, type Vec3 } from "../geometry/vector.ts";
import type { EndName } from "../model/ref.ts";
import type { FaceName, Slot } from "../model/stock/stock.ts";
import { faceAcross } from "./axes.ts";
import type { Body } from "./bodies.ts";

/** Where a screw meets the face of a bar. */
export interface Landing {
  readonly bar: string;
  readonly face: FaceName;
  readonly point: Vec3;
  /** Along the bar from its drawn from point, m. */
  readonly station: number;
  /** From the middle of the face, m. */
  readonly across: number;
  /** The slot whose line is nearest; undefined where the face has none. */
  readonly slot: Slot | undefined;
  /** Distance of the screw from that slot's line, m. */
  readonly off: number;
  /** Distance along the bar to the nearer cut end, negative where the screw lies beyond it, m. */
  readonly toEnd: { readonly end: EndName; readonly distance: number };
}

/** A screw sits in a slot when it is no further from its line, m: play of the screw in the slot opening. */
export const SLOT_PLAY = 0.0006;

/** Distance from a point along the bar to the cut of an end, positive inside the bar, m. */
export function alongToCut(body: Body, end: EndName, point: Vec3): number {
  const { plane } = body.cuts[end];
  const slope = dot(plane.normal, body.axes.x);
  const rise = dot(subtract(plane.point, point), plane.normal);
  return Math.abs(slope) < 1e-9 ? Infinity : (end === "to" ? 1 : -1) * (rise / slope);
}

/** Where a point lies on a face of a bar. */
export function landOn(body: Body, face: FaceName, point: Vec3): Landing {
  const r = subtract(point, body.bar.from);
  const across = dot(r, faceAcross(body.axes, face));
  let slot: Slot | undefined;
  for (const candidate of body.bar.profile.slots) {
    if (candidate.face !== face) continue;
    if (!slot || Math.abs(candidate.across - across) < Math.abs(slot.across - across)) slot = candidate;
  }
  const [from, to] = [alongToCut(body, "from", point), alongToCut(body, "to", point)];
  return {
    bar: body.bar.ref.id,
    face,
    point,
    station: dot(r, body.axes.x),
    across,
    slot,
    off: slot ? Math.abs(slot.across - across) : Infinity,
    toEnd: from <= to ? { end: "from", distance: from } : { end: "to", distance: to },
  };
}

/** Whether a screw there has a slot to go into. */
export function sitsInSlot(landing: Landing): boolean {
  return landing.slot !== undefined && !landing.slot.closed && landing.off <= SLOT_PLAY && landing.toEnd.distance > 0;
}
