import { add, dot, normalise, type Vec3 } from "../geometry/vector.ts";
import { faceNames, faceNormal } from "./axes.ts";
import type { Body } from "./bodies.ts";

/** Faces look one way within this cosine: 1°. */
const SAME_WAY = Math.cos(Math.PI / 180);
/** Faces lie in one plane within this, m. */
const FLUSH = 0.001;
/** A bar that rises less than this out of the plane of a sheet (sine of 45°) lies under it; others stand under it. */
const LIES = Math.SQRT1_2;
/** Directions whose parts differ by less are the rounding of coordinates. */
const ALIKE = 1e-6;

export const liesUnder = (body: Body, normal: Vec3): boolean => Math.abs(dot(body.axes.x, normal)) < LIES;

function top({ prism }: Body, way: Vec3): number {
  return (prism?.vertices ?? []).reduce((most, vertex) => Math.max(most, dot(vertex, way)), -Infinity);
}

/**
 * Out of the bars into a sheet on them: the way their faces look on the named side, where all those faces lie in one plane, as on
 * rails that slope; else the side as named.
 */
export function sheetNormal(on: Vec3, bars: readonly Body[]): Vec3 {
  const lying = bars.filter((body) => liesUnder(body, on));
  const ways = lying.map(({ axes }) =>
    faceNames.map((face) => faceNormal(axes, face)).reduce((a, b) => (dot(b, on) > dot(a, on) ? b : a)),
  );
  if (ways.length === 0) return on;
  const way = normalise(ways.reduce(add));
  const tops = lying.map((body) => top(body, way));
  if (ways.some((one) => dot(one, way) < SAME_WAY) || Math.max(...tops) - Math.min(...tops) > FLUSH) return on;
  return Math.max(...way.map((part, i) => Math.abs(part - (on[i] ?? 0)))) < ALIKE ? on : way;
}
