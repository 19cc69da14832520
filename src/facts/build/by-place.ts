import type { Vec3 } from "../../geometry/vector.ts";

/** Places nearer to each other than this along an axis are level, m. */
const LEVEL = 0.001;

/** The number of the level each value lies on: values with no gap of a level between them share one, whatever was listed first. */
function levels(values: readonly number[]): readonly number[] {
  const of = new Map<number, number>();
  let [level, last] = [0, Number.NEGATIVE_INFINITY];
  for (const value of [...values].sort((a, b) => a - b)) {
    if (value - last > LEVEL) level += 1;
    of.set(value, level);
    last = value;
  }
  return values.map((value) => of.get(value) ?? 0);
}

/** Ids from the floor up, then along +y, then along +x; what shares a place stays as it was given. */
export function byPlace(places: readonly { readonly id: string; readonly at: Vec3 }[]): readonly string[] {
  const ranks = ([2, 1, 0] as const).map((axis) => levels(places.map(({ at }) => at[axis])));
  return places
    .map(({ id }, i) => ({ id, ranks: ranks.map((along) => along[i] ?? 0) }))
    .sort((a, b) => {
      const axis = a.ranks.findIndex((rank, i) => rank !== b.ranks[i]);
      return axis < 0 ? 0 : (a.ranks[axis] ?? 0) - (b.ranks[axis] ?? 0);
    })
    .map(({ id }) => id);
}
