import { splitEdge, splitTriangle } from "./flip.ts";
import { isEncroachedBy } from "./hull.ts";
import { locate } from "./locate.ts";
import { addVertex, apex, head, inCircle, type Triangulation } from "./triangulation.ts";

/**
 * Adds the circumcentre of the triangle of `e` and returns it; returns -1 and names in `blocked` the hull edges that the centre
 * lies beyond or too close to, which have to be divided first.
 */
export function addCircumcentre(m: Triangulation, e: number, blocked: number[]): number {
  const [a, b, c] = [m.corner[e] as number, head(m, e), apex(m, e)];
  const by = (m.y[b] as number) - (m.y[a] as number);
  const bz = (m.z[b] as number) - (m.z[a] as number);
  const cy = (m.y[c] as number) - (m.y[a] as number);
  const cz = (m.z[c] as number) - (m.z[a] as number);
  const d = 2 * (by * cz - bz * cy);
  const b2 = by * by + bz * bz;
  const c2 = cy * cy + cz * cz;
  const y = Math.round((m.y[a] as number) + (cz * b2 - bz * c2) / d);
  const z = Math.round((m.z[a] as number) + (by * c2 - cy * b2) / d);
  const place = locate(m, e, y, z);
  if (!place || place.where === "at") return -1;
  if (place.where === "beyond" || (place.where === "on" && (m.twin[place.edge] as number) < 0)) {
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
      const f = m.twin[e] as number;
      if (f < 0) {
        hull.push(e);
        continue;
      }
      const u = Math.floor(f / 3);
      if (seen.has(u)) continue;
      if (inCircle(m, m.corner[3 * u] as number, m.corner[3 * u + 1] as number, m.corner[3 * u + 2] as number, y, z))
        seen.add(u);
    }
  }
  return hull;
}
