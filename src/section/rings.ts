import { type Region, type Ring, signedArea } from "../geometry/polygon.ts";

/** Receives the two ends of an edge [m]. */
export type EdgeVisitor = (y0: number, z0: number, y1: number, z1: number) => void;

/** Calls `visit` for every edge of a region so that material is on the left: outer ring anticlockwise, holes clockwise. */
export function visitBoundary(region: Region, visit: EdgeVisitor): void {
  const backwards: EdgeVisitor = (y0, z0, y1, z1) => visit(y1, z1, y0, z0);
  visitEdges(region.outer, signedArea(region.outer) > 0 ? visit : backwards);
  for (const hole of region.holes) visitEdges(hole, signedArea(hole) > 0 ? backwards : visit);
}

function visitEdges(ring: Ring, visit: EdgeVisitor): void {
  let from = ring[ring.length - 1];
  if (!from) return;
  for (const to of ring) {
    visit(from[0], from[1], to[0], to[1]);
    from = to;
  }
}
