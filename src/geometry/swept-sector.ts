import { type Arc, arcSize, arcsOverlap, FULL_TURN, gapsBetween, mergeArcs, wrap } from "./arc.ts";
import { convexDepth } from "./convex.ts";
import type { Ring } from "./polygon.ts";
import type { Prism } from "./prism.ts";
import { type AxisPose, outlineInBand, type PoseAxes, poseAxes, stretchAlong } from "./seen-along.ts";
import { cross, rotateAbout, type Vec2, type Vec3 } from "./vector.ts";

/** A straight flat-ended arm out to `radius`, `halfWidth` to either side, between two heights along the axis [m], zMin < zMax. */
export interface Arm {
  /** How far from the axis it begins; at the axis where left out. */
  readonly inner?: number;
  readonly radius: number;
  readonly halfWidth: number;
  readonly zMin: number;
  readonly zMax: number;
}

/** The arm may sink this deep into an obstacle before it counts as blocked [m]: touching is free, and 1e-6 mm is rounding. */
const TOUCHING = 1e-9;

function armAt(arm: Arm, angle: number): Ring {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const corner = (r: number, w: number): Vec2 => [r * cos - w * sin, r * sin + w * cos];
  const inner = arm.inner ?? 0;
  return [
    corner(inner, -arm.halfWidth),
    corner(arm.radius, -arm.halfWidth),
    corner(arm.radius, arm.halfWidth),
    corner(inner, arm.halfWidth),
  ];
}

/** Angles [rad] at which a point at polar angle `bearing` and distance `reach` has the offset `at` along a line square to it. */
function addEvents(events: number[], bearing: number, reach: number, at: number): void {
  if (Math.abs(at) > reach || reach === 0) return;
  const swing = Math.acos(at / reach);
  events.push(wrap(bearing - swing), wrap(bearing + swing));
}

/**
 * Every angle at which the arm's outline and the obstacle's may come into touch or part: a corner of the obstacle on the line of
 * one of the arm's four sides, or a corner of the arm on the line of one of the obstacle's edges. Between two neighbouring events
 * the answer cannot change.
 */
function touchEvents(arm: Arm, outline: Ring): readonly number[] {
  const events: number[] = [0];
  const quarter = Math.PI / 2;
  const inner = arm.inner ?? 0;
  let from = outline[outline.length - 1];
  for (const to of outline) {
    if (from === undefined) break;
    const [bearing, reach] = [Math.atan2(to[1], to[0]), Math.hypot(to[0], to[1])];
    // Along the arm the corner lies at reach·cos(bearing − angle), across it at reach·cos(bearing − angle − π/2).
    addEvents(events, bearing, reach, arm.radius);
    addEvents(events, bearing, reach, inner);
    addEvents(events, bearing - quarter, reach, arm.halfWidth);
    addEvents(events, bearing - quarter, reach, -arm.halfWidth);
    const [nx, ny] = [to[1] - from[1], from[0] - to[0]];
    const size = Math.hypot(nx, ny);
    if (size > 0) {
      const offset = (nx * to[0] + ny * to[1]) / size;
      const facing = Math.atan2(ny, nx);
      for (const r of [inner, arm.radius]) {
        for (const w of [-arm.halfWidth, arm.halfWidth]) {
          // The arm's corner stands at angle + atan2(w, r); its height over the edge's line is hypot(r, w)·cos(that − facing).
          addEvents(events, facing - Math.atan2(w, r), Math.hypot(r, w), offset);
        }
      }
    }
    from = to;
  }
  return events.sort((a, b) => a - b);
}

/**
 * The angles at which the arm would cut into an obstacle, exact but for rounding: events are closed-form, and between them one
 * test of two convex outlines decides. Stretches where the arm sinks in less than 1e-9 m (measured at their middle) count as free,
 * so an arm that slides along a face is not blocked. Throws RangeError on a zero axis or a zero direction along the axis.
 */
export function blockedArcs(pose: AxisPose, arm: Arm, obstacle: Prism): readonly Arc[] {
  const outline = outlineInReach(pose, arm, obstacle);
  return outline ? outlineArcs(arm, outline) : [];
}

/** The outline of what an obstacle has in the heights of an arm, seen along the axis; undefined where the arm stays clear of it. */
export function outlineInReach(pose: AxisPose, arm: Arm, obstacle: Prism): Ring | undefined {
  const axes = poseAxes(pose);
  return withinReach(arm, axes, pose, obstacle) ? outlineInBand(pose, axes, arm.zMin, arm.zMax, obstacle) : undefined;
}

/** The angles at which the arm would cut into an outline seen along its axis. */
export function outlineArcs(arm: Arm, outline: Ring): readonly Arc[] {
  const events = [...touchEvents(arm, outline), FULL_TURN];
  const blocked: Arc[] = [];
  let from = 0;
  for (const to of events) {
    if (convexDepth(armAt(arm, (from + to) / 2), outline) > TOUCHING) blocked.push({ from, to });
    from = to;
  }
  return mergeArcs(blocked);
}

/** Cheap refusal: nothing beyond the arm's tip circle along one direction, or beyond its heights along the axis, can be hit. */
function withinReach(arm: Arm, axes: PoseAxes, pose: AxisPose, obstacle: Prism): boolean {
  const reach = Math.hypot(arm.radius, arm.halfWidth);
  const meets = (axis: Vec3, from: number, to: number): boolean => {
    const [low, high] = stretchAlong(obstacle, pose.apex, axis);
    return low < to && high > from;
  };
  return meets(axes.w, arm.zMin, arm.zMax) && meets(axes.u, -reach, reach) && meets(axes.v, -reach, reach);
}

/**
 * Cheap and sure, not exact: whether an obstacle lies wholly beside the upright box round what the arm sweeps over an arc of at most
 * half a turn. False says nothing.
 */
export function besideSweep(pose: AxisPose, arm: Arm, arc: Arc, obstacle: Prism): boolean {
  const half = arcSize(arc) / 2;
  if (half > Math.PI / 2) return false;
  const { u: zero, w } = poseAxes(pose);
  const u = rotateAbout(zero, w, (arc.from + arc.to) / 2);
  const { inner = 0, radius, halfWidth, zMin, zMax } = arm;
  const apart = (axis: Vec3, from: number, to: number): boolean => {
    const [low, high] = stretchAlong(obstacle, pose.apex, axis);
    return low >= to || high <= from;
  };
  const side = radius * Math.sin(half) + halfWidth;
  return (
    apart(w, zMin, zMax) ||
    apart(u, inner * Math.cos(half) - halfWidth * Math.sin(half), Math.hypot(radius, halfWidth)) ||
    apart(cross(w, u), -side, side)
  );
}

/** The angles over which the arm stands clear of every obstacle, in order round the turn. A box is an obstacle by prismFromBox. */
export function freeArcs(pose: AxisPose, arm: Arm, obstacles: readonly Prism[]): readonly Arc[] {
  const blocked: Arc[] = [];
  for (const obstacle of obstacles) for (const arc of blockedArcs(pose, arm, obstacle)) blocked.push(arc);
  return gapsBetween(blocked);
}

/** Whether the arm hits an obstacle somewhere on its way over an arc. */
export const sectorHits = (pose: AxisPose, arm: Arm, arc: Arc, obstacle: Prism): boolean =>
  blockedArcs(pose, arm, obstacle).some((blocked) => arcsOverlap(blocked, arc));

/** The widest of some arcs, the first of equal ones; undefined where there is none. */
export function widestArc(arcs: readonly Arc[]): Arc | undefined {
  let best: Arc | undefined;
  for (const arc of arcs) if (best === undefined || arcSize(arc) > arcSize(best)) best = arc;
  return best;
}
