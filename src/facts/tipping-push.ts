import type { Vec3 } from "../geometry/vector.ts";
import type { Sum } from "./free-body.ts";
import type { TippingEdge } from "./tipping-edges.ts";

/**
 * The least push along a level direction, one way or the other, that tips what stands on these edges, N: moments about each edge,
 * of the loads and of the push at its height over the floor (statics of rigid bodies). Infinity where there is nothing to tip over.
 */
export function tippingPush(
  { force, moment }: Sum,
  edges: readonly TippingEdge[],
  way: Vec3,
  at: { readonly height: number; readonly floor: number },
): number {
  let least = Infinity;
  for (const { from, inward } of edges) {
    const lever = Math.abs(inward[0] * way[0] + inward[1] * way[1]) * at.height;
    if (lever <= 0) continue;
    const [x, y] = inward;
    const held =
      moment[1] * x - moment[0] * y + (from[0] * x + from[1] * y) * force[2] - at.floor * (force[0] * x + force[1] * y);
    least = Math.min(least, Math.max(0, held) / lever);
  }
  return least;
}
