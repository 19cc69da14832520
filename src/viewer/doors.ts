import type { DoorData, ModelData } from "../drawing/model3d/model-data.ts";
import { add, cross, dot, times, type Vec, vecAt } from "./vec.ts";

/** A direction turned about an axis (O. Rodrigues' formula), rad. */
const rotated = (v: Vec, axis: Vec, angle: number): Vec => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return add(add(times(v, c), cross(axis, v), s), axis, dot(axis, v) * (1 - c));
};

/** How far a door is turned from where it is drawn when it has gone this share of its way, rad. */
export const turnAt = ({ swing: [shut, open] }: DoorData, share: number): number =>
  share === 0 ? 0 : shut + (open - shut) * share;

/** Where what swings with a door comes to be. */
export interface Swung {
  point(p: Vec): Vec;
  direction(v: Vec): Vec;
}

/** By which share of its way each door stands open, in their order; what is not told is as it is drawn. */
export type Opened = readonly number[];

/** How each part swings with its door when doors have gone these shares of their ways; parts that stand still are not in it. */
export function swungParts(model: ModelData, opened: Opened): ReadonlyMap<number, Swung> {
  const parts = new Map<number, Swung>();
  for (const [i, door] of model.doors.entries()) {
    const angle = turnAt(door, opened[i] ?? 0);
    if (angle === 0) continue;
    const [hinge, axis] = [vecAt(door.point, 0), vecAt(door.axis, 0)];
    const swung: Swung = {
      point: (p) => add(hinge, rotated(add(p, hinge, -1), axis, angle)),
      direction: (v) => rotated(v, axis, angle),
    };
    for (const part of door.parts) parts.set(part, swung);
  }
  return parts;
}

/** Places or directions of corners, each as it comes to be with the part it belongs to; the same list where nothing swings. */
export function swungList(
  list: Float32Array,
  belongs: Int32Array,
  parts: ReadonlyMap<number, Swung>,
  what: keyof Swung,
): Float32Array {
  if (parts.size === 0) return list;
  const made = list.slice();
  belongs.forEach((part, i) => {
    const swung = parts.get(part);
    if (swung) made.set(swung[what](vecAt(list, 3 * i)), 3 * i);
  });
  return made;
}
