import { splitEdge } from "./flip.ts";
import { addVertex, apex, head, prev, type Triangulation, turnTo } from "./triangulation.ts";

/** Sides are not divided below this many grid steps: rounding to the grid would bend them. */
export const SHORTEST = 64;
/** Hull edges meeting at less than 60 degrees are divided at powers of two, so that their parts do not drive each other on. */
const ACUTE_COSINE = 0.5;

/** Marks the vertices where two hull edges enclose less than 60 degrees of material. */
export function acuteCorners(m: Triangulation): Int32Array {
  const acute = new Int32Array(m.vertices);
  for (let e = 0; e < 3 * m.triangles; e++) {
    if ((m.twin[e] as number) >= 0) continue;
    // Turn round the start of e to the other hull edge there; the corner is acute when the turn stays below 60 degrees.
    const v = m.corner[e] as number;
    let f = prev(e);
    let angle = angleAt(m, e);
    while ((m.twin[f] as number) >= 0) {
      angle += angleAt(m, m.twin[f] as number);
      f = prev(m.twin[f] as number);
    }
    if (angle < Math.acos(ACUTE_COSINE) - 1e-6) acute[v] = 1;
  }
  return acute;
}

/** Angle of the triangle of `e` at the start of `e` [rad]. */
function angleAt(m: Triangulation, e: number): number {
  const [a, b, c] = [m.corner[e] as number, head(m, e), apex(m, e)];
  const by = (m.y[b] as number) - (m.y[a] as number);
  const bz = (m.z[b] as number) - (m.z[a] as number);
  const cy = (m.y[c] as number) - (m.y[a] as number);
  const cz = (m.z[c] as number) - (m.z[a] as number);
  return Math.atan2(by * cz - bz * cy, by * cy + bz * cz);
}

const squaredLength = (m: Triangulation, e: number): number => squared(m, m.corner[e] as number, head(m, e));

/** Square of the distance between two vertices. */
export const squared = (m: Triangulation, a: number, b: number): number =>
  ((m.y[a] as number) - (m.y[b] as number)) ** 2 + ((m.z[a] as number) - (m.z[b] as number)) ** 2;

/** Whether the vertex opposite hull edge `e` lies in the circle over it. */
export const encroached = (m: Triangulation, e: number): boolean =>
  isEncroachedBy(m, e, m.y[apex(m, e)] as number, m.z[apex(m, e)] as number);

/** Whether a point lies in the circle over hull edge `e`. */
export function isEncroachedBy(m: Triangulation, e: number, y: number, z: number): boolean {
  const [a, b] = [m.corner[e] as number, head(m, e)];
  return ((m.y[a] as number) - y) * ((m.y[b] as number) - y) + ((m.z[a] as number) - z) * ((m.z[b] as number) - z) < 0;
}

/** Whether hull edge `e` is long enough to be divided. */
const isDivisible = (m: Triangulation, e: number): boolean => squaredLength(m, e) >= (2 * SHORTEST) ** 2;

/** Divides hull edge `e`; returns the new vertex or -1 when the edge is too short. */
export function divide(m: Triangulation, e: number, acute: Int32Array): number {
  if (!isDivisible(m, e)) return -1;
  const [a, b] = [m.corner[e] as number, head(m, e)];
  const sharpA = a < acute.length && (acute[a] as number) === 1;
  const sharpB = b < acute.length && (acute[b] as number) === 1;
  let share = 0.5;
  if (sharpA !== sharpB) {
    const length = Math.sqrt(squaredLength(m, e));
    // The power of two nearest to half the length lies between a third and two thirds of it.
    const shell = 2 ** Math.round(Math.log2(length / 2));
    share = sharpA ? shell / length : 1 - shell / length;
  }
  const y = Math.round((m.y[a] as number) + share * ((m.y[b] as number) - (m.y[a] as number)));
  const z = Math.round((m.z[a] as number) + share * ((m.z[b] as number) - (m.z[a] as number)));
  // Rounding may push the point off a sloping edge by half a step; never across the triangle.
  const c = apex(m, e);
  if (turnTo(m, b, c, y, z) <= 0 || turnTo(m, c, a, y, z) <= 0) return -1;
  const p = addVertex(m, y, z);
  splitEdge(m, e, p);
  return p;
}
