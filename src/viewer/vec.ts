/** Points and directions of the viewer, mm. */
export type Vec = readonly [number, number, number];

export const add = (a: Vec, b: Vec, k = 1): Vec => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
export const times = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: Vec): number => Math.hypot(a[0], a[1], a[2]);
export const unit = (a: Vec): Vec => times(a, 1 / (size(a) || 1));
export const mix = (a: Vec, b: Vec, t: number): Vec => add(times(a, 1 - t), b, t);
/** Three numbers of a flat list. */
export const vecAt = (list: ArrayLike<number>, i: number): Vec => [list[i] ?? 0, list[i + 1] ?? 0, list[i + 2] ?? 0];
