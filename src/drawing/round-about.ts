import { boundsOf, boundsOverlap } from "../geometry/bounds.ts";
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

/** A picture that is wider than high, and askew, shows so many times what lies within its height. */
const BESIDE = 1.8;

/** Whether a solid is seen in a picture of what lies round a point, m. */
export function inPicture({ prism }: Solid, { at, radius }: { readonly at: Vec3; readonly radius: number }): boolean {
  return boundsOverlap(boundsOf(prism.vertices), { min: at, max: at }, BESIDE * radius);
}
