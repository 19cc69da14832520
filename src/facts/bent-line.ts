import { along, scale, type Vec3 } from "../geometry/vector.ts";
import { valueAt } from "../mechanics/piecewise.ts";
import { type Body, cutStation } from "./bodies.ts";
import type { View } from "./response.ts";

/** How far the axis of a bar moves at `count` evenly spaced stations from cut to cut, global, m. Undefined where the bar is no part of the structure. */
export function bentLine(view: View, body: Body, count: number): readonly Vec3[] | undefined {
  const moved = view.deflections(body.bar.ref.id);
  if (!moved) return undefined;
  const length = cutStation(body, "to") - cutStation(body, "from");
  const { x, y, z } = body.axes;
  return Array.from({ length: count }, (_, i) => {
    const at = (length * i) / (count - 1);
    return along(along(scale(x, valueAt(moved.x, at)), y, valueAt(moved.y, at)), z, valueAt(moved.z, at));
  });
}
