import { cross, dot, subtract, type Vec3 } from "../geometry/vector.ts";
import { type Body, cutPoint } from "./bodies.ts";

/** Normal of the plane that the bars round a panel lie in. */
export function panelNormal(held: readonly Body[]): Vec3 | undefined {
  const [first, ...others] = held;
  if (!first) return undefined;
  for (const other of others) {
    const across =
      Math.abs(dot(first.axes.x, other.axes.x)) > 0.9
        ? subtract(cutPoint(other, "from"), cutPoint(first, "from"))
        : other.axes.x;
    const n = cross(first.axes.x, across);
    const size = Math.hypot(...n);
    if (size > 1e-9) return [n[0] / size, n[1] / size, n[2] / size];
  }
  return undefined;
}
