import type { Acting } from "./acting.ts";
import { fullestSets } from "./compatible-sets.ts";
import type { Excludes } from "./excluding.ts";

/** Cases that act together, each at one place of its own. */
export interface Choice {
  readonly names: readonly string[];
  /** The names, of a load that roams with its place. */
  readonly said: readonly string[];
  readonly indices: readonly number[];
}

interface Choices {
  /** Each variable case alone, then every fullest set. */
  readonly all: readonly Choice[];
  /** Sets to which no further variable case can be added: all of them, or two for each case where there are too many. */
  readonly fullest: readonly Choice[];
  /** Fullest sets of three and more less one case each: what is left out may be what held another part of the frame down. */
  readonly lessOne: readonly Choice[];
  readonly accidental: readonly Choice[];
}

/** Where along its bar a load that roams is, in the order of its places. */
const PLACES = [
  "at the from end",
  "a quarter along",
  "half way along",
  "three quarters along",
  "at the to end",
] as const;

/** More fullest sets than these are not all tried: each is solved leaning four ways with three stiffnesses of joints. */
const MOST_SETS = 16;

/** Sets of cases that may act together. */
export function together(known: Acting, excludes: Excludes): Choices {
  const namesOf = (kind: Acting["cases"][number]["kind"]): readonly string[] => [
    ...new Set(known.cases.filter((c) => c.kind === kind).map((c) => c.name)),
  ];
  const places = new Map<string, number[]>();
  for (const [i, c] of known.cases.entries()) places.set(c.name, [...(places.get(c.name) ?? []), i]);
  const choose = (names: readonly string[]): Choice[] => {
    const most = names.reduce((count, name) => Math.max(count, places.get(name)?.length ?? 0), 0);
    return Array.from({ length: most }, (_, place) => ({
      names,
      said: names.map((name) =>
        (places.get(name)?.length ?? 1) > 1 ? `${name} ${PLACES[place] ?? ""}`.trimEnd() : name,
      ),
      indices: names.map((name) => places.get(name)?.[Math.min(place, (places.get(name)?.length ?? 1) - 1)] ?? 0),
    }));
  };
  const names = namesOf("variable");
  const sets = fullestSets(names, excludes, MOST_SETS);
  const less = new Map<string, readonly string[]>();
  for (const set of sets) {
    if (set.length < 3) continue;
    for (const left of set) {
      const rest = set.filter((name) => name !== left);
      less.set(JSON.stringify(rest), rest);
    }
  }
  const alone = names.flatMap((name) => choose([name]));
  const several = sets.filter((set) => set.length > 1).flatMap(choose);
  const single = sets.filter((set) => set.length === 1).flatMap(choose);
  return {
    all: [...alone, ...several],
    fullest: [...single, ...several],
    lessOne: [...less.values()].flatMap(choose),
    accidental: namesOf("accidental").flatMap((name) => choose([name])),
  };
}
