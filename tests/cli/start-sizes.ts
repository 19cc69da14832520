import type { Range } from "../../src/cli/start/drawing.ts";
import { KINDS, type KindName } from "../../src/cli/start/kinds.ts";
import { SERIES, type Series } from "../../src/cli/start/series.ts";

/** What a frame is asked of `start` by. */
export interface Order {
  readonly name: KindName;
  readonly profile: string;
  readonly units: Series["units"];
  readonly length: string;
  readonly depth: string;
  readonly height: string;
}

export const KIND_NAMES = Object.keys(KINDS) as KindName[];

/** Shares of the range of length, depth and height. */
const LEAST = [0, 0, 0] as const;
const GREATEST = [1, 1, 1] as const;
const SHARES = [LEAST, GREATEST, [1, 0, 0], [0, 1, 0]] as const;
/** A short, deep and high cart carries much and stands on little. */
const HIGH_AND_SHORT = [0, 1, 1] as const;
const CART_SHARES = [...SHARES, HIGH_AND_SHORT] as const;

function within([least, greatest]: Range, share: number, { units }: Series): number {
  const step = units === "mm-N-kg" ? 1 : 0.25;
  const [low, high] = [Math.ceil(least / step - 1e-6), Math.floor(greatest / step + 1e-6)];
  return Math.round(low + (high - low) * share) * step;
}

/** All that `shares` of a kind's ranges come to in a series. */
function ordersOf(name: KindName, series: Series, shares: readonly (readonly [number, number, number])[]): Order[] {
  const { kind, usual } = KINDS[name];
  const first = kind.ranges(series, usual[series.units][2]);
  if (first === undefined) return [];
  return shares.flatMap(([l, d, h]) => {
    const height = within(first.height, h, series);
    const ranges = kind.ranges(series, height) ?? first;
    return series.profiles.slice(-1).map((profile) => ({
      name,
      profile,
      units: series.units,
      length: String(within(ranges.length, l, series)),
      depth: String(within(ranges.depth, d, series)),
      height: String(height),
    }));
  });
}

const unlessTold = (series: Series): boolean => SERIES.find(({ units }) => units === series.units) === series;
const allOf = (name: KindName) => (name === "cart" ? CART_SHARES : SHARES);

/**
 * Every kind in the series it comes in unless told otherwise at its least and greatest, a cart also high on a short foot; in the other series
 * at one end, in turn.
 */
export const SOME_SIZES: readonly Order[] = KIND_NAMES.flatMap((name, kind) =>
  SERIES.flatMap((series, at) => {
    const ends = [LEAST, GREATEST, ...(name === "cart" ? [HIGH_AND_SHORT] : [])];
    return ordersOf(name, series, unlessTold(series) ? ends : [(kind + at) % 2 === 0 ? LEAST : GREATEST]);
  }),
);

/** Every kind in every series at all ends of its ranges. */
export const ALL_SIZES: readonly Order[] = KIND_NAMES.flatMap((name) =>
  SERIES.flatMap((series) => ordersOf(name, series, allOf(name))),
);
