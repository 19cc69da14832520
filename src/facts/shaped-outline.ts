import { cornersWithin } from "../geometry/half-planes.ts";
import { add, dot, scale, type Vec3 } from "../geometry/vector.ts";
import { planeAxes } from "./plane-axes.ts";
import type { SlotPanel } from "./slot-panels.ts";

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
  return cornersWithin(sides).map((at) => add(add(scale(u, at[0]), scale(v, at[1])), scale(normal, plane)));
}
