import { along, scale, type Vec3 } from "../geometry/vector.ts";
import { valueAt } from "../mechanics/piecewise.ts";
import { type Body, cutStation } from "./bodies.ts";
import type { View } from "./response.ts";

/** How a bar moves at evenly spaced stations from cut to cut. */
export interface BarLine {
  /** Of its axis, global, m. */
  readonly moved: readonly Vec3[];
  /** About its axis, rad. */
  readonly rolled: readonly number[];
}

/** How a bar moves under a combination at `count` stations. Undefined where the bar is no part of the structure. */
export function bentLine(view: View, body: Body, count: number): BarLine | undefined {
  const moved = view.deflections(body.bar.ref.id);
  if (!moved) return undefined;
  const length = cutStation(body, "to") - cutStation(body, "from");
  const { x, y, z } = body.axes;
  const stations = Array.from({ length: count }, (_, i) => (length * i) / (count - 1));
  return {
    moved: stations.map((at) =>
      along(along(scale(x, valueAt(moved.x, at)), y, valueAt(moved.y, at)), z, valueAt(moved.z, at)),
    ),
    rolled: stations.map((at) => valueAt(moved.turnX, at)),
  };
}
