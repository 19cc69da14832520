import type { Vec3 } from "../../geometry/vector.ts";
import { add, cross, dot, length, scale, subtract } from "../../geometry/vector.ts";

/** A small rigid motion: rotation ω (rad) and translation of the reference point (m). */
export interface Twist {
  readonly turn: Vec3;
  readonly shift: Vec3;
}

/** How a rigid part moves. `pitch` is the slide along the axis per radian, m; zero for a plain turn. */
export type Motion =
  | { readonly kind: "turns"; readonly axis: Vec3; readonly through: Vec3; readonly pitch: number }
  | { readonly kind: "slides"; readonly along: Vec3 };

/** The twist seen from another reference point: a body that turns by ω moves its points by shift + ω × (point − reference). */
export function shiftAt({ turn, shift }: Twist, reference: Vec3, point: Vec3): Vec3 {
  return add(shift, cross(turn, subtract(point, reference)));
}

/** Parts of a motion this small beside the whole are rounding. */
export const MOTION_TOLERANCE = 1e-6;

/** Unit vector with its first clearly non-zero component positive, so that a line always prints the same way round. */
function lineDirection(v: Vec3): Vec3 {
  const unit = scale(v, 1 / length(v));
  const lead = unit.find((c) => Math.abs(c) > MOTION_TOLERANCE) ?? 1;
  const clean = (lead < 0 ? scale(unit, -1) : unit).map((c) => (Math.abs(c) < MOTION_TOLERANCE ? 0 : c));
  return [clean[0] ?? 0, clean[1] ?? 0, clean[2] ?? 0];
}

/**
 * Names the motion of a part whose twist has its reference at `centre`, a point of the part; `size` is the size of the
 * frame, m. The point on the axis is the one nearest to `centre` (Mozzi's axis: shift along it only).
 */
export function nameMotion({ turn, shift }: Twist, centre: Vec3, size: number): Motion {
  const rate = length(turn);
  if (rate * size <= MOTION_TOLERANCE * length(shift)) return { kind: "slides", along: lineDirection(shift) };
  const through = add(centre, scale(cross(turn, shift), 1 / (rate * rate)));
  const pitch = dot(turn, shift) / (rate * rate);
  const plain = Math.abs(pitch) <= MOTION_TOLERANCE * size;
  return { kind: "turns", axis: lineDirection(turn), through, pitch: plain ? 0 : pitch };
}
