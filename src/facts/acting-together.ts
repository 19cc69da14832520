import type { Acting } from "./acting.ts";

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

/** All sets to which nothing can be added (Bron and Kerbosch 1973), up to one more than `most` of them. */
function maximalSets(
  names: readonly string[],
  excludes: (a: string, b: string) => boolean,
  most: number,
): readonly (readonly string[])[] {
  const sets: (readonly string[])[] = [];
  const grow = (taken: readonly string[], open: readonly string[], tried: readonly string[]): void => {
    if (sets.length > most) return;
    if (open.length === 0 && tried.length === 0) {
      if (taken.length > 0) sets.push(names.filter((name) => taken.includes(name)));
      return;
    }
    // Whatever goes with the pivot comes with it or with something that does not.
    const fits = (name: string) => (other: string) => other !== name && !excludes(name, other);
    const all = [...open, ...tried];
    const pivot = all.reduce((best, name) =>
      open.filter(fits(name)).length > open.filter(fits(best)).length ? name : best,
    );
    const left = [...open];
    const done = [...tried];
    for (const name of open.filter((one) => one === pivot || excludes(pivot, one))) {
      grow([...taken, name], left.filter(fits(name)), done.filter(fits(name)));
      left.splice(left.indexOf(name), 1);
      done.push(name);
    }
  };
  grow([], names, []);
  return sets;
}

/** For each case two fullest sets with it: filled up in the order of the file, and against it. */
function someSets(
  names: readonly string[],
  excludes: (a: string, b: string) => boolean,
): readonly (readonly string[])[] {
  const sets = new Map<string, readonly string[]>();
  for (const seed of names)
    for (const order of [names, [...names].reverse()]) {
      const taken = [seed];
      for (const name of order) if (name !== seed && !taken.some((other) => excludes(name, other))) taken.push(name);
      const set = names.filter((name) => taken.includes(name));
      sets.set(JSON.stringify(set), set);
    }
  return [...sets.values()];
}

/** Sets of cases that may act together. */
export function together(known: Acting, excludes: (a: string, b: string) => boolean): Choices {
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
  const every = maximalSets(names, excludes, MOST_SETS);
  const sets = every.length > MOST_SETS ? someSets(names, excludes) : every;
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
