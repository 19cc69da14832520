import { along, cross, dot, normalise, rotateAbout, scale, subtract, type Vec3 } from "../geometry/vector.ts";
import type { Bar } from "../model/frame.ts";
import type { FaceName } from "../model/stock/stock.ts";

export const up: Vec3 = [0, 0, 1];

/** Within this angle (rad) of plumb a bar counts as vertical, and its face A then looks +x at roll 0. */
const VERTICAL = Math.PI / 180;
const verticalFaceA: Vec3 = [1, 0, 0];

/** How a bar stands: x along it from → to, y out of face A, z out of face B, right-handed. */
export interface Axes {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

export const faceNames: readonly FaceName[] = ["A", "B", "C", "D"];

/** The part of a direction square to an axis, or undefined where they are parallel. */
function squareTo(axis: Vec3, direction: Vec3): Vec3 | undefined {
  const rest = along(direction, axis, -dot(direction, axis));
  return dot(rest, rest) < 1e-12 ? undefined : normalise(rest);
}

/** Section axes of a bar by the rule of the frame format: tall names where face A looks, roll turns it out of the usual position. */
export function axesOf(bar: Bar): Axes {
  const x = normalise(subtract(bar.to, bar.from));
  const vertical = Math.abs(dot(x, up)) > Math.cos(VERTICAL);
  const usual = squareTo(x, vertical ? verticalFaceA : up) ?? [0, 1, 0];
  const y =
    bar.stance.by === "tall" ? (squareTo(x, bar.stance.direction) ?? usual) : rotateAbout(usual, x, bar.stance.angle);
  return { x, y, z: cross(x, y) };
}

/** Outward normal of a face. */
export function faceNormal(axes: Axes, face: FaceName): Vec3 {
  switch (face) {
    case "A":
      return axes.y;
    case "B":
      return axes.z;
    case "C":
      return scale(axes.y, -1);
    case "D":
      return scale(axes.z, -1);
  }
}

/** Direction along a face, square to the bar, towards the face counted next: how offsets across a face are counted. */
export function faceAcross(axes: Axes, face: FaceName): Vec3 {
  const next = faceNames[(faceNames.indexOf(face) + 1) % 4] ?? "A";
  return faceNormal(axes, next);
}
