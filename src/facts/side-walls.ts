import { type Prism, platePrism } from "../geometry/prism.ts";
import { along, type Vec3 } from "../geometry/vector.ts";
import type { Bracket } from "../model/stock/stock.ts";

/** An inside corner [m]: its point on the bracket's middle, the ways its legs run, and the way across them (unit). */
interface CornerPose {
  readonly origin: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly side: Vec3;
}

/**
 * The walls between the two legs of a bracket: triangles from tip to tip, two at its edges, more of them evenly between. A single
 * wall stands in the middle, where no hole is.
 */
export function sideWalls(part: Bracket, { origin, u, v, side }: CornerPose): readonly Prism[] {
  const { gussets, gussetThickness: thick, width, legs } = part;
  const middle = gussets === 1 ? [(width - thick) / 2] : [];
  const offsets =
    gussets < 2 ? middle : Array.from({ length: gussets }, (_, i) => (i * (width - thick)) / (gussets - 1));
  return offsets.map((offset) => {
    const base = along(origin, side, offset - width / 2);
    return platePrism([base, along(base, u, legs.a.length), along(base, v, legs.b.length)], side, thick);
  });
}
