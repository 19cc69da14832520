import type { Hindrance } from "../hindrances.ts";
import type { Unreached } from "./steps.ts";

const always = (): boolean => true;

/** What a screw's connector holds stays together while something covers the screw: the joint is made before it is covered. */
const jointFirst = ({ holds, covers }: Unreached): Hindrance[] =>
  holds.flatMap((part) =>
    holds
      .filter((by) => by !== part)
      .map((by): Hindrance => ({ part, by, why: "covered", stops: always, soft: true, while: [covers] })),
  );

/** The bar of a screw's nut stays while something covers the screw: the connector is screwed on it before that comes. */
const barFirst = ({ bar, covers }: Unreached): Hindrance[] =>
  covers
    .filter((by) => by !== bar)
    .map((by): Hindrance => ({ part: bar, by, why: "covered", stops: always, soft: true, while: [] }));

interface Reaching {
  readonly unreached: readonly Unreached[];
  /** Parts that nothing frees, and sub-assemblies that cannot be built or put in as one. */
  readonly faults: number;
}

/**
 * An order that leaves as few screws as may be out of reach: where one leaves some, orders are looked for in which they are reached
 * before they are covered, and taken where fewer are left and nothing else is worse.
 */
export function reachFirst<T extends Reaching>(orderWith: (kept: readonly Hindrance[]) => T): T {
  let best = orderWith([]);
  let kept: readonly Hindrance[] = [];
  for (let better = true; better && best.unreached.length > 0; ) {
    better = false;
    for (const first of [jointFirst, barFirst]) {
      const more = [...kept, ...best.unreached.flatMap(first)];
      const next = orderWith(more);
      if (next.unreached.length >= best.unreached.length || next.faults > best.faults) continue;
      [best, kept, better] = [next, more, true];
    }
  }
  return best;
}
