import type { Triple } from "../frame.ts";

// The few operations that resolving needs; the model knows no geometry.

export function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** a + b × factor */
export function plusTimes(a: Triple, b: Triple, factor: number): Triple {
  return [a[0] + b[0] * factor, a[1] + b[1] * factor, a[2] + b[2] * factor];
}

export function lengthOf(a: Triple): number {
  return Math.hypot(a[0], a[1], a[2]);
}

export function unit(a: Triple): Triple {
  const length = lengthOf(a);
  return [a[0] / length, a[1] / length, a[2] / length];
}
