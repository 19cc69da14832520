import { add, cross, dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Triple } from "../model/frame.ts";

const axis = (i: number): Vec3 => [i === 0 ? 1 : 0, i === 1 ? 1 : 0, i === 2 ? 1 : 0];

/** Two directions in the plane, the first nearest to the first axis of the drawing that is not along the normal. */
export function planeAxes(normal: Triple): readonly [Vec3, Vec3] {
  const upright = [0, 1, 2].reduce((a, b) =>
    Math.abs(normal[b as 0 | 1 | 2]) > Math.abs(normal[a as 0 | 1 | 2]) + 1e-9 ? b : a,
  );
  const [first] = [0, 1, 2].filter((i) => i !== upright);
  const raw = axis(first ?? 0);
  const u = add(raw, scale(normal, -dot(raw, normal)));
  const unit = scale(u, 1 / Math.hypot(...u));
  const v = cross(normal, unit);
  const second = [0, 1, 2].filter((i) => i !== upright)[1] ?? 1;
  return [unit, v[second as 0 | 1 | 2] < 0 ? scale(v, -1) : v];
}
