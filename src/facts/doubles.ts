import { boxBounds } from "../geometry/box.ts";
import { overlappingPairs } from "../geometry/sweep-and-prune.ts";
import { dot, midpoint } from "../geometry/vector.ts";
import { defineFact } from "./fact.ts";
import { inTube, type Tube, tubes } from "./tubes.ts";

/** Bars drawn on one line over some of their length. */
export interface Doubles {
  /** These without those that another of them lies in: the first by name stays, whatever the order of the file. */
  singly<T>(bars: readonly T[], idOf: (bar: T) => string): readonly T[];
}

/** Bars nearer to parallel than this (cosine; about 5°) may lie on one line. */
const ALONG = Math.cos((5 * Math.PI) / 180);
/** Overlaps shorter than this are ends that meet, m. */
const SHARED = 1e-3;

/** Whether the middle line of one bar runs near that of the other where both are. */
function onOneLine(a: Tube, b: Tube): boolean {
  if (Math.abs(dot(a.axes.x, b.axes.x)) < ALONG) return false;
  const [from, to] = [inTube(a, b.bar.from), inTube(a, b.bar.to)];
  const [low, high] = [Math.max(0, Math.min(from[0], to[0])), Math.min(a.length, Math.max(from[0], to[0]))];
  if (high - low < SHARED) return false;
  const share = ((low + high) / 2 - from[0]) / (to[0] - from[0]);
  const [y, z] = ([1, 2] as const).map((i) => Math.abs(from[i] + share * (to[i] - from[i])));
  // Each middle line inside the other bar: no frame has bars side by side so near.
  const near = (wide: "y" | "z", off: number | undefined): boolean =>
    (off ?? Infinity) < Math.min(a.half[wide], b.half[wide]);
  return near("y", y) && near("z", z);
}

/**
 * Bars drawn twice, or one in the other. bar.clash tells them; what ends in both of them ends in the first of them, or everything
 * that meets them would be asked about as well.
 */
export const doubles = defineFact<Doubles, { tubes: typeof tubes }>({
  id: "doubles",
  needs: { tubes },
  compute({ tubes: all }) {
    const list = [...all.values()];
    const boxes = list.map((tube) =>
      boxBounds({
        centre: midpoint(tube.bar.from, tube.bar.to),
        axes: [tube.axes.x, tube.axes.y, tube.axes.z],
        half: [tube.length / 2, tube.half.y, tube.half.z],
      }),
    );
    const before = new Map<string, string[]>();
    for (const [i, j] of overlappingPairs(boxes)) {
      const [a, b] = [list[i], list[j]];
      if (!a || !b || !onOneLine(a, b)) continue;
      const [first, second] = [a.bar.ref.id, b.bar.ref.id].sort();
      if (first === undefined || second === undefined) continue;
      before.set(second, [...(before.get(second) ?? []), first]);
    }
    return {
      singly: (bars, idOf) => {
        if (before.size === 0) return bars;
        const ids = new Set(bars.map(idOf));
        return bars.filter((bar) => !(before.get(idOf(bar)) ?? []).some((first) => ids.has(first)));
      },
    };
  },
});
