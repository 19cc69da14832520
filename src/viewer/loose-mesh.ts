import type { Mesh } from "./mesh.ts";
import type { Vec } from "./vec.ts";

/** Corners or ends of lines that belong to no part. */
export function looseMesh(points: readonly Vec[], part = -1): Mesh {
  return {
    at: Float32Array.from(points.flat()),
    normal: new Float32Array(3 * points.length),
    away: new Float32Array(3 * points.length),
    part: new Int32Array(points.length).fill(part),
    rides: new Int32Array(points.length).fill(-1),
    station: new Float32Array(points.length),
  };
}

/** Such meshes as one. */
export function joined(all: readonly Mesh[]): Mesh {
  const floats = (of: (mesh: Mesh) => Float32Array): Float32Array =>
    Float32Array.from(all.flatMap((mesh) => [...of(mesh)]));
  const whole = (of: (mesh: Mesh) => Int32Array): Int32Array => Int32Array.from(all.flatMap((mesh) => [...of(mesh)]));
  return {
    at: floats(({ at }) => at),
    normal: floats(({ normal }) => normal),
    away: floats(({ away }) => away),
    part: whole(({ part }) => part),
    rides: whole(({ rides }) => rides),
    station: floats(({ station }) => station),
  };
}
