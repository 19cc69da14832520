import type { Vec3 } from "../geometry/vector.ts";

/** Edges of a box, from and to. */
export function boxEdges(low: Vec3, high: Vec3): readonly (readonly [Vec3, Vec3])[] {
  const corner = (i: number): Vec3 => [i & 1 ? high[0] : low[0], i & 2 ? high[1] : low[1], i & 4 ? high[2] : low[2]];
  return [1, 2, 4].flatMap((step) =>
    [0, 1, 2, 3, 4, 5, 6, 7]
      .filter((i) => (i & step) === 0)
      .map((i): readonly [Vec3, Vec3] => [corner(i), corner(i | step)]),
  );
}
