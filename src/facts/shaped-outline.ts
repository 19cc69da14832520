import { convexHull } from "../geometry/convex.ts";
import { add, dot, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { planeAxes } from "./plane-axes.ts";
import type { SlotPanel } from "./slot-panels.ts";

/** Rounding of places on two edges at once, m. */
const ON = 1e-9;

/**
 * The corners of a panel that is no rectangle, in the middle of its thickness: as far as the slots of the bars all round it reach, less `room` [m].
 * Empty where some side is free or the bars shut nothing in.
 */
export function shapedOutline({ panel, normal, plane, edges, slotless }: SlotPanel, room: number): readonly Vec3[] {
  if (panel.held.kind !== "in-slot" || slotless.length > 0 || edges.length < 3) return [];
  if (panel.held.edges.some((edge) => edge.kind === "free")) return [];
  const [u, v] = planeAxes(normal);
  const sides = edges.map(({ outward, floor }) => ({
    out: [dot(outward, u), dot(outward, v)] as const,
    reach: floor - room,
  }));
  const corners = sides.flatMap((a, i) =>
    sides.slice(i + 1).flatMap((b): readonly Vec2[] => {
      const det = a.out[0] * b.out[1] - a.out[1] * b.out[0];
      if (Math.abs(det) < ON) return [];
      const at: Vec2 = [
        (a.reach * b.out[1] - b.reach * a.out[1]) / det,
        (b.reach * a.out[0] - a.reach * b.out[0]) / det,
      ];
      return sides.every(({ out, reach }) => out[0] * at[0] + out[1] * at[1] <= reach + ON) ? [at] : [];
    }),
  );
  const ring = convexHull(corners);
  return ring.length < 3 ? [] : ring.map((at) => add(add(scale(u, at[0]), scale(v, at[1])), scale(normal, plane)));
}
