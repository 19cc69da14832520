import type { DoorData, ModelData } from "../drawing/model3d/model-data.ts";
import type { Mesh } from "./mesh.ts";
import { add, cross, dot, times, type Vec, vecAt } from "./vec.ts";

/** A direction turned about an axis (O. Rodrigues' formula), rad. */
const rotated = (v: Vec, axis: Vec, angle: number): Vec => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return add(add(times(v, c), cross(axis, v), s), axis, dot(axis, v) * (1 - c));
};

/** How far a door is turned from where it is drawn when it has gone this share of its way, rad. */
export const turnAt = ({ swing: [shut, open] }: DoorData, share: number): number =>
  share === 0 ? 0 : shut + (open - shut) * share;

/** Corners and normals of a mesh with its doors opened by a share of their way. */
export function openedMesh(model: ModelData, mesh: Mesh, share: number): { at: Float32Array; normal: Float32Array } {
  const [at, normal] = [mesh.at.slice(), mesh.normal.slice()];
  for (const door of model.doors) {
    const parts = new Set(door.parts);
    const [point, axis] = [vecAt(door.point, 0), vecAt(door.axis, 0)];
    const angle = turnAt(door, share);
    mesh.part.forEach((part, i) => {
      if (!parts.has(part)) return;
      const [x, y, z] = [at[3 * i] ?? 0, at[3 * i + 1] ?? 0, at[3 * i + 2] ?? 0];
      at.set(add(point, rotated(add([x, y, z], point, -1), axis, angle)), 3 * i);
      normal.set(rotated([normal[3 * i] ?? 0, normal[3 * i + 1] ?? 0, normal[3 * i + 2] ?? 0], axis, angle), 3 * i);
    });
  }
  return { at, normal };
}
