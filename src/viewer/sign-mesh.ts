import type { ModelData } from "../drawing/model3d/model-data.ts";
import type { Mesh } from "./mesh.ts";

/** Signs of loads and goods as lines that belong to no part. */
export function signMesh({ arrows, boxes, doors }: ModelData): Mesh {
  const at: number[] = [];
  for (const arrow of arrows) {
    const [a, b] = [arrow.slice(0, 3), arrow.slice(3, 6)];
    at.push(...a, ...b);
    const run = b.map((c, i) => c - (a[i] ?? 0));
    const long = Math.hypot(...run) || 1;
    const along = run.map((c) => c / long);
    // Four barbs, so that a head shows from every side.
    const seed = Math.abs(along[2] ?? 0) > 0.9 ? [1, 0, 0] : [0, 0, 1];
    const u = [0, 1, 2].map(
      (i) =>
        (along[(i + 1) % 3] ?? 0) * (seed[(i + 2) % 3] ?? 0) - (along[(i + 2) % 3] ?? 0) * (seed[(i + 1) % 3] ?? 0),
    );
    const v = [0, 1, 2].map(
      (i) => (along[(i + 1) % 3] ?? 0) * (u[(i + 2) % 3] ?? 0) - (along[(i + 2) % 3] ?? 0) * (u[(i + 1) % 3] ?? 0),
    );
    for (const [way, side] of [
      [u, 1],
      [u, -1],
      [v, 1],
      [v, -1],
    ] as const)
      at.push(...b, ...b.map((c, i) => c - 0.26 * long * (along[i] ?? 0) + side * 0.09 * long * (way[i] ?? 0)));
  }
  for (const c of boxes) at.push(c);
  // Every other stretch of a door's arc, so that it shows as dashed.
  for (const { arc } of doors) for (let i = 0; i + 5 < arc.length; i += 6) at.push(...arc.slice(i, i + 6));
  const count = at.length / 3;
  return {
    at: Float32Array.from(at),
    normal: new Float32Array(at.length),
    away: new Float32Array(at.length),
    part: new Int32Array(count).fill(-1),
    rides: new Int32Array(count).fill(-1),
    station: new Float32Array(count),
  };
}
