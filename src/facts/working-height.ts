import { dot } from "../geometry/vector.ts";
import { up } from "./axes.ts";
import { type Body, cutPoint } from "./bodies.ts";

/** Height at which people push and lean, m over the floor (EN 1991-1-1:2002, 6.4: 1.2 m at most; here 1.1 m, common practice). */
export const WORKING_HEIGHT = 1.1;
/** Nodes this little below the highest are on one level with it, m: a bar's depth. */
export const ONE_LEVEL = 0.06;
/** A post that ends no higher over the floor, m, stands: on a foot, a caster, or a low bar on either. */
const STANDS = 0.3;
/** Cosine of what counts as a plumb post: within 10°. */
const PLUMB = Math.cos((10 * Math.PI) / 180);

/**
 * Where a post that stands taller than people push is pushed, along it from its drawn from point, m; undefined where it is joined
 * on that level, at one of these stations.
 */
export function pushedStation(post: Body, joined: Iterable<number>, floor: number): number | undefined {
  const rise = dot(post.axes.x, up);
  if (Math.abs(rise) < PLUMB) return undefined;
  const heights = [cutPoint(post, "from")[2], cutPoint(post, "to")[2]].map((z) => z - floor);
  if (Math.max(...heights) < WORKING_HEIGHT + ONE_LEVEL || Math.min(...heights) > STANDS) return undefined;
  for (const station of joined) {
    const below = WORKING_HEIGHT + floor - (post.bar.from[2] + station * rise);
    if (below >= 0 && below < ONE_LEVEL) return undefined;
  }
  return (floor + WORKING_HEIGHT - post.bar.from[2]) / rise;
}
