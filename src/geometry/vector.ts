/** Vectors in space [m or dimensionless] and in a plane. Every function is pure; no function changes its arguments. */
export type Vec3 = readonly [number, number, number];
export type Vec2 = readonly [number, number];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
/** a + k·b: the point reached from a after k lengths of b. */
export const along = (a: Vec3, b: Vec3, k: number): Vec3 => [a[0] + b[0] * k, a[1] + b[1] * k, a[2] + b[2] * k];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
export const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
export const midpoint = (a: Vec3, b: Vec3): Vec3 => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
/** From a (t = 0) to b (t = 1), both ends exact. */
export const lerp = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] * (1 - t) + b[0] * t,
  a[1] * (1 - t) + b[1] * t,
  a[2] * (1 - t) + b[2] * t,
];

/** The unit vector along a. Throws RangeError where a has no direction (zero, or not finite). */
export function normalise(a: Vec3): Vec3 {
  const size = length(a);
  if (!(size > 0) || !Number.isFinite(size)) throw new RangeError("a vector without length has no direction");
  return [a[0] / size, a[1] / size, a[2] / size];
}

/** v turned about the axis through the origin by angle [rad], right-handed (Rodrigues' formula). Throws RangeError on a zero axis. */
export function rotateAbout(v: Vec3, axis: Vec3, angle: number): Vec3 {
  const k = normalise(axis);
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const kv = cross(k, v);
  const lift = dot(k, v) * (1 - cos);
  return [
    v[0] * cos + kv[0] * sin + k[0] * lift,
    v[1] * cos + kv[1] * sin + k[1] * lift,
    v[2] * cos + kv[2] * sin + k[2] * lift,
  ];
}

/**
 * Angle between two directions, 0 to π [rad]. Taken as 2·atan2(|â − b̂|, |â + b̂|), which keeps full precision near 0 and π
 * where the arc cosine loses half its digits (W. Kahan, "How futile are mindless assessments of roundoff", 2006).
 * Throws RangeError on a zero vector.
 */
export function angleBetween(a: Vec3, b: Vec3): number {
  const p = normalise(a);
  const q = normalise(b);
  return 2 * Math.atan2(length(subtract(p, q)), length(add(p, q)));
}

/**
 * Two unit vectors u, v that with the unit vector n make a right-handed set (u × v = n). u is taken in the plane of n and
 * the global axis n leans on least, so the choice is the same on every run.
 */
export function perpendicularPair(n: Vec3): readonly [Vec3, Vec3] {
  const [x, y, z] = [Math.abs(n[0]), Math.abs(n[1]), Math.abs(n[2])];
  const seed: Vec3 = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const u = normalise(subtract(seed, scale(n, dot(seed, n))));
  return [u, cross(n, u)];
}

export const add2 = (a: Vec2, b: Vec2): Vec2 => [a[0] + b[0], a[1] + b[1]];
export const subtract2 = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];
export const dot2 = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];
/** The out-of-plane part of a × b: positive where b lies to the left of a. */
export const cross2 = (a: Vec2, b: Vec2): number => a[0] * b[1] - a[1] * b[0];
export const length2 = (a: Vec2): number => Math.hypot(a[0], a[1]);
export const distance2 = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
