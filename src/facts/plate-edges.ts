import { distanceToEdge } from "../geometry/polygon.ts";
import type { Ref } from "../model/ref.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";

/** A hole of a joining plate and its distance from the plate's nearest edge, m. */
export interface PlateEdge {
  readonly screw: Ref<"screw">;
  readonly hole: string;
  readonly diameter: number;
  readonly distance: number;
}

/** Edge distances of the holes in use in joining plates. */
export const plateEdges = defineFact<readonly PlateEdge[], { placements: typeof placements }>({
  id: "plate-edges",
  needs: { placements },
  compute({ placements: placed }) {
    const list: PlateEdge[] = [];
    for (const { part, screws } of placed.connectors) {
      if (part.kind !== "plate") continue;
      for (const hole of part.holes) {
        const screw = screws.find((placed) => placed.hole === hole.id);
        if (!screw) continue;
        let distance = Infinity;
        for (const [i, a] of part.outline.entries()) {
          const b = part.outline[(i + 1) % part.outline.length];
          if (b) distance = Math.min(distance, distanceToEdge(hole.at, a, b));
        }
        list.push({ screw: screw.ref, hole: hole.id, diameter: hole.diameter, distance });
      }
    }
    return list;
  },
});
