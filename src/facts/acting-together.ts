import type { Acting } from "./acting.ts";

/** Cases that act together, each at one place of its own. */
export interface Choice {
  readonly names: readonly string[];
  readonly indices: readonly number[];
}

interface Choices {
  /** Each variable case alone, then every fullest set. */
  readonly all: readonly Choice[];
  /** Sets to which no further variable case can be added, at least one for each case. */
  readonly fullest: readonly Choice[];
  /** Fullest sets of three and more less one case each: what is left out may be what held another part of the frame down. */
  readonly lessOne: readonly Choice[];
  readonly accidental: readonly Choice[];
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
      indices: names.map((name) => places.get(name)?.[Math.min(place, (places.get(name)?.length ?? 1) - 1)] ?? 0),
    }));
  };
  const names = namesOf("variable");
  const sets = new Map<string, readonly string[]>();
  for (const seed of names) {
    const taken = [seed];
    for (const name of names) if (name !== seed && !taken.some((other) => excludes(name, other))) taken.push(name);
    const inOrder = names.filter((name) => taken.includes(name));
    sets.set(JSON.stringify(inOrder), inOrder);
  }
  const less = new Map<string, readonly string[]>();
  for (const set of sets.values()) {
    if (set.length < 3) continue;
    for (const left of set) {
      const rest = set.filter((name) => name !== left);
      less.set(JSON.stringify(rest), rest);
    }
  }
  const alone = names.flatMap((name) => choose([name]));
  const several = [...sets.values()].filter((set) => set.length > 1).flatMap(choose);
  const single = [...sets.values()].filter((set) => set.length === 1).flatMap(choose);
  return {
    all: [...alone, ...several],
    fullest: [...single, ...several],
    lessOne: [...less.values()].flatMap(choose),
    accidental: namesOf("accidental").flatMap((name) => choose([name])),
  };
}
