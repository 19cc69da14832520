import { convexHull } from "./convex.ts";
import type { Ring } from "./polygon.ts";
import { cutPrism, type Prism } from "./prism.ts";
import { along, cross, dot, normalise, scale, subtract, type Vec2, type Vec3 } from "./vector.ts";

/**
 * An axis with its zero: a point on it [m], its direction, and the direction of angle 0, of which only the part square to the axis
 * counts. Angles grow counter-clockwise seen against the axis.
 */
export interface AxisPose {
  readonly apex: Vec3;
  readonly axis: Vec3;
  readonly zero: Vec3;
}

/** Unit directions of an axis pose: u at angle 0, v at 90°, w along the axis. */
export interface PoseAxes {
  readonly u: Vec3;
  readonly v: Vec3;
  readonly w: Vec3;
}

/** The directions of a pose. Throws RangeError on a zero axis, or a zero direction along the axis. */
export function poseAxes(pose: AxisPose): PoseAxes {
  const w = normalise(pose.axis);
  const u = normalise(along(pose.zero, w, -dot(pose.zero, w)));
  return { u, v: cross(w, u), w };
}

/** The stretch a body covers along a direction, counted from a point [m]. */
export function stretchAlong(body: Prism, from: Vec3, direction: Vec3): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const vertex of body.vertices) {
    const at = dot(subtract(vertex, from), direction);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low, high];
}

/**
 * The outline [m], seen against the axis, of what a body has between two heights along it, zMin < zMax; undefined where it has
 * nothing there.
 */
export function outlineInBand(
  pose: AxisPose,
  axes: PoseAxes,
  zMin: number,
  zMax: number,
  body: Prism,
): Ring | undefined {
  const above = cutPrism(body, { point: along(pose.apex, axes.w, zMin), normal: scale(axes.w, -1) });
  const band = above && cutPrism(above, { point: along(pose.apex, axes.w, zMax), normal: axes.w });
  if (band === undefined) return undefined;
  const flat = band.vertices.map((vertex): Vec2 => {
    const d = subtract(vertex, pose.apex);
    return [dot(d, axes.u), dot(d, axes.v)];
  });
  const hull = convexHull(flat);
  return hull.length >= 3 ? hull : undefined;
}
