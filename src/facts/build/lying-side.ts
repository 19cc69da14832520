import { dot, type Vec3 } from "../../geometry/vector.ts";
import type { Item } from "./plan.ts";

/** Sine of a slope under which a way counts as level, and a move as one along the floor. */
const LEVEL = 0.04;
/** What comes so near to the lowest lies on the floor with it, m. */
const RESTS = 0.005;

/**
 * The side a frame lies on while the first pieces are put in: nothing comes in through the floor, and both pieces it is begun with rest on it if they
 * can. Undefined where no side serves all.
 *
 * @param reach how far parts reach along a unit vector, m
 */
export function lyingSide(
  items: readonly Item[],
  ways: readonly Vec3[],
  reach: (parts: readonly string[], way: Vec3) => number,
): Vec3 | undefined {
  const lying = items.filter((item) => item.lying);
  if (lying.length === 0) return undefined;
  const legs = lying.flatMap(({ path }) => path?.legs ?? []);
  let best: { side: Vec3; rests: number } | undefined;
  for (const side of ways) {
    if (Math.abs(side[2]) > LEVEL || legs.some((leg) => dot(leg, side) < -LEVEL)) continue;
    const lowest = Math.max(...lying.map(({ parts }) => reach(parts, side)));
    const first = lying.slice(0, 2).filter(({ parts }) => reach(parts, side) > lowest - RESTS);
    if (!best || first.length > best.rests) best = { side, rests: first.length };
  }
  return best?.side;
}
