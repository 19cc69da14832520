import { containsPoint, distanceToEdge, type Ring } from "./polygon.ts";
import type { Prism } from "./prism.ts";
import { type AxisPose, outlineInBand, poseAxes, stretchAlong } from "./seen-along.ts";

/** A round stem about an axis [m]: its radius and the two heights along the axis between which it needs room, from < to. */
export interface Stem {
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** The stem may sink this deep into a body before it counts as stopped [m]: touching is free, and 1e-6 mm is rounding. */
const TOUCHING = 1e-9;
/** Halvings of the height at which a slanting body enters: 200 mm come down to 2e-10 mm. */
const HALVINGS = 40;

/** Distance [m] from the axis to a convex outline seen along it; 0 where the axis runs through. */
function offAxis(outline: Ring): number {
  if (containsPoint({ outer: outline, holes: [] }, [0, 0])) return 0;
  let least = Infinity;
  let from = outline[outline.length - 1];
  for (const to of outline) {
    if (from !== undefined) least = Math.min(least, distanceToEdge([0, 0], from, to));
    from = to;
  }
  return least;
}

/**
 * The height along the axis [m] at which a body first enters the room of a stem; Infinity where it stays out of it. Exact where the
 * body begins square to the axis; elsewhere what sinks in by less than 1e-9 m counts as touching.
 */
export function stemMeets(pose: AxisPose, stem: Stem, body: Prism): number {
  const axes = poseAxes(pose);
  const { radius, from, to } = stem;
  const [low, high] = stretchAlong(body, pose.apex, axes.w);
  if (low >= to - TOUCHING || high <= from + TOUCHING) return Infinity;
  for (const side of [axes.u, axes.v]) {
    const [near, far] = stretchAlong(body, pose.apex, side);
    if (near >= radius || far <= -radius) return Infinity;
  }
  const inside = (height: number): boolean => {
    const outline = outlineInBand(pose, axes, from, height, body);
    return outline !== undefined && offAxis(outline) < radius - TOUCHING;
  };
  if (!inside(to)) return Infinity;
  let free = Math.max(from, low);
  if (inside(free + TOUCHING)) return free;
  let met = to;
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (free + met) / 2;
    if (inside(middle)) met = middle;
    else free = middle;
  }
  return met;
}
