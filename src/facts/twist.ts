import { extrema } from "../mechanics/piecewise.ts";
import { type Governed, governing } from "./governing.ts";
import type { View } from "./response.ts";

/** How far a bar is wound up along its length under service loads, rad. */
export function governedTwist(views: readonly View[], bar: string): Governed<"angle"> | undefined {
  return governing(views, ["service"], "angle", (view) => {
    const moved = view.deflections(bar);
    if (!moved) return undefined;
    const { min, max } = extrema(moved.turnX);
    return max.value - min.value;
  });
}
