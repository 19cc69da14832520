import { distance, type Vec3 } from "../geometry/vector.ts";
import type { Solid } from "./solids/solid.ts";

/** Points of an outline beyond which it is that of a cut end rather than a face. */
const FACE = 8;

/** What is drawn of a solid round a point, m: none of what lies far off, of bars that run out of the picture no cut end. */
export function roundAbout(solid: Solid, at: Vec3, radius: number): Solid | undefined {
  const far = (points: readonly Vec3[]): boolean => points.every((point) => distance(point, at) > 2 * radius);
  if (solid.kind !== "bar") return far(solid.prism.vertices) ? undefined : solid;
  const near = solid.surfaces.filter(({ rings }) => rings.flat().length <= FACE || !far(rings.flat()));
  return { ...solid, surfaces: near };
}
