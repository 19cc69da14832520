import type { Risk } from "./reach-distances.ts";

/** Distances behind guards of one risk: a line a hazard height, a column a height of guard. All in mm. */
interface Table {
  readonly guards: readonly number[];
  readonly lines: readonly (readonly [hazard: number, distances: readonly number[]])[];
}

/** ISO 13857:2019, Table 1 (from memory). */
const LOW: Table = {
  guards: [1000, 1200, 1400, 1600, 1800, 2000, 2200, 2400, 2500],
  lines: [
    [2500, [0, 0, 0, 0, 0, 0, 0, 0, 0]],
    [2400, [100, 100, 100, 100, 100, 100, 100, 100, 0]],
    [2200, [600, 600, 500, 500, 400, 350, 250, 0, 0]],
    [2000, [1100, 900, 700, 600, 500, 350, 0, 0, 0]],
    [1800, [1100, 1000, 900, 900, 600, 0, 0, 0, 0]],
    [1600, [1300, 1000, 900, 900, 500, 0, 0, 0, 0]],
    [1400, [1300, 1000, 900, 800, 100, 0, 0, 0, 0]],
    [1200, [1400, 1000, 900, 500, 0, 0, 0, 0, 0]],
    [1000, [1400, 1000, 900, 300, 0, 0, 0, 0, 0]],
    [800, [1300, 900, 600, 0, 0, 0, 0, 0, 0]],
    [600, [1200, 500, 0, 0, 0, 0, 0, 0, 0]],
    [400, [1200, 300, 0, 0, 0, 0, 0, 0, 0]],
    [200, [1100, 200, 0, 0, 0, 0, 0, 0, 0]],
    [0, [1100, 200, 0, 0, 0, 0, 0, 0, 0]],
  ],
};

/** ISO 13857:2019, Table 2 (from memory). */
const HIGH: Table = {
  guards: [1000, 1200, 1400, 1600, 1800, 2000, 2200, 2400, 2500, 2700],
  lines: [
    [2700, [0, 0, 0, 0, 0, 0, 0, 0, 0, 0]],
    [2600, [900, 800, 700, 600, 600, 500, 400, 300, 100, 0]],
    [2400, [1100, 1000, 900, 800, 700, 600, 400, 300, 100, 0]],
    [2200, [1300, 1200, 1000, 900, 800, 600, 400, 300, 0, 0]],
    [2000, [1400, 1300, 1100, 900, 800, 600, 400, 0, 0, 0]],
    [1800, [1500, 1400, 1100, 900, 800, 600, 0, 0, 0, 0]],
    [1600, [1500, 1400, 1100, 900, 800, 500, 0, 0, 0, 0]],
    [1400, [1500, 1400, 1100, 900, 800, 0, 0, 0, 0, 0]],
    [1200, [1500, 1400, 1100, 900, 700, 0, 0, 0, 0, 0]],
    [1000, [1500, 1400, 1000, 800, 0, 0, 0, 0, 0, 0]],
    [800, [1500, 1300, 900, 600, 0, 0, 0, 0, 0, 0]],
    [600, [1400, 1300, 800, 0, 0, 0, 0, 0, 0, 0]],
    [400, [1400, 1200, 400, 0, 0, 0, 0, 0, 0, 0]],
    [200, [1200, 900, 0, 0, 0, 0, 0, 0, 0, 0]],
    [0, [1100, 500, 0, 0, 0, 0, 0, 0, 0, 0]],
  ],
};

const TABLES: Readonly<Record<Risk, Table>> = { low: LOW, high: HIGH };

/** Lowest guard that the tables know, m: a lower one is stepped over and guards nothing. */
export const LOWEST_GUARD = 1;
/** Height over the floor that nobody reaches from it, m: ISO 13857:2019, 4.2.1. */
export const OUT_OF_REACH: Readonly<Record<Risk, number>> = { low: 2.5, high: 2.7 };

const mm = (metres: number): number => Math.round(metres * 1e6) / 1e3;

/**
 * Horizontal distance that keeps a person who reaches over a guard of this height from a hazard at this height, m; undefined for
 * guards lower than 1 m. Nothing is interpolated: of neighbouring lines and columns the safer counts (ISO 13857:2019, 4.2.2.1).
 */
export function overDistance(risk: Risk, hazard: number, guard: number): number | undefined {
  const { guards, lines } = TABLES[risk];
  const column = guards.findLastIndex((height) => height <= mm(guard));
  if (column < 0) return undefined;
  if (mm(hazard) >= mm(OUT_OF_REACH[risk])) return 0;
  const at = mm(Math.max(0, hazard));
  const above = lines.findLast(([height]) => height >= at);
  const below = lines.find(([height]) => height <= at);
  return Math.max(above?.[1][column] ?? 0, below?.[1][column] ?? 0) / 1000;
}

/** The same for a hazard that reaches from one height to another: the worst of all heights between. */
export function overDistanceWithin(risk: Risk, low: number, high: number, guard: number): number | undefined {
  const heights = TABLES[risk].lines.map(([height]) => height / 1000).filter((height) => height > low && height < high);
  let worst: number | undefined;
  for (const height of [low, ...heights, high]) {
    const distance = overDistance(risk, height, guard);
    if (distance === undefined) return undefined;
    worst = Math.max(worst ?? 0, distance);
  }
  return worst;
}
