import { pryingPull } from "../mechanics/fasteners/preload.ts";
import type { Clamp } from "./clamping.ts";
import type { ClampForce } from "./joint-forces.ts";

/**
 * How a straight pull grows by leverage: the leg of a bracket is pulled up at its corner and heels on its far edge. 1 for a screw
 * that is pulled along its own line.
 */
export function leverage({ placed, connector }: Clamp): number {
  const { part } = connector;
  if (part.kind !== "bracket") return 1;
  for (const leg of [part.legs.a, part.legs.b]) {
    const hole = leg.holes.find(({ id }) => id === placed.hole);
    if (!hole) continue;
    const heel = leg.length - hole.at[0];
    return heel > 0 ? pryingPull(1, hole.at[0], heel) : 1;
  }
  return 1;
}

/** Pull of a nut on the lips from the loads, leverage included, N: beside the preload, not on top of it. */
export function nutPull({ clamp, pull, bent }: ClampForce): number {
  return pull * leverage(clamp) + bent;
}

/** Share of a nut that has lips over it: one flush with a cut end has half. */
export function lipsOver({ placed: { into } }: Clamp): number {
  if (into.kind !== "nut" || !into.nut) return 1;
  return Math.min(1, Math.max(0, 0.5 + into.landing.toEnd.distance / into.nut.length));
}
