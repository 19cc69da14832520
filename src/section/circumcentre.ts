import { splitEdge, splitTriangle } from "./flip.ts";
import { isEncroachedBy } from "./hull.ts";
import { locate } from "./locate.ts";
import { int, real } from "./read.ts";
import { addVertex, apex, head, inCircle, type Triangulation } from "./triangulation.ts";

/**
 * Adds the circumcentre of the triangle of `e` and returns it; returns -1 and names in `blocked` the hull edges that the centre
 * lies beyond or too close to, which have to be divided first.
 */
export function addCircumcentre(m: Triangulation, e: number, blocked: number[]): number {
  const [a, b, c] = [int(m.corner, e), head(m, e), apex(m, e)];
  const by = real(m.y, b) - real(m.y, a);
  const bz = real(m.z, b) - real(m.z, a);
  const cy = real(m.y, c) - real(m.y, a);
  const cz = real(m.z, c) - real(m.z, a);
  const d = 2 * (by * cz - bz * cy);
  const b2 = by * by + bz * bz;
  const c2 = cy * cy + cz * cz;
  const y = Math.round(real(m.y, a) + (cz * b2 - bz * c2) / d);
  const z = Math.round(real(m.z, a) + (by * c2 - cy * b2) / d);
  const place = locate(m, e, y, z);
  if (!place || place.where === "at") return -1;
  if (place.where === "beyond" || (place.where === "on" && int(m.twin, place.edge) < 0)) {
    blocked.push(place.edge);
    return -1;
  }
  for (const hull of hullOfCavity(m, place.edge, y, z)) if (isEncroachedBy(m, hull, y, z)) blocked.push(hull);
  if (blocked.length > 0) return -1;
  const p = addVertex(m, y, z);
  if (place.where === "on") splitEdge(m, place.edge, p);
  else splitTriangle(m, place.edge, p);
  return p;
}

/** Hull edges of the triangles whose circles hold a point that lies in the triangle of `from`. */
function hullOfCavity(m: Triangulation, from: number, y: number, z: number): number[] {
  const hull: number[] = [];
  const seen = new Set<number>([Math.floor(from / 3)]);
  for (const t of seen) {
    for (let e = 3 * t; e < 3 * t + 3; e++) {
      const f = int(m.twin, e);
      if (f < 0) {
        hull.push(e);
        continue;
      }
      const u = Math.floor(f / 3);
      if (seen.has(u)) continue;
      if (inCircle(m, int(m.corner, 3 * u), int(m.corner, 3 * u + 1), int(m.corner, 3 * u + 2), y, z)) seen.add(u);
    }
  }
  return hull;
}
