import type { Excludes } from "./excluding.ts";

/** All sets to which nothing can be added (Bron and Kerbosch 1973), up to one more than `most` of them. */
function maximalSets(names: readonly string[], excludes: Excludes, most: number): readonly (readonly string[])[] {
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
function someSets(names: readonly string[], excludes: Excludes): readonly (readonly string[])[] {
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

/** Sets of cases that may act together and to which none can be added: all of them, or two for each case where there are more than `most`. */
export function fullestSets(
  names: readonly string[],
  excludes: Excludes,
  most: number,
): readonly (readonly string[])[] {
  const every = maximalSets(names, excludes, most);
  return every.length > most ? someSets(names, excludes) : every;
}

/** Names that exclude one another, directly or through others, of two and more: what one group does asks nothing of the next. */
export function vyingGroups(names: readonly string[], excludes: Excludes): readonly (readonly string[])[] {
  const left = new Set(names);
  const groups: string[][] = [];
  for (const seed of names) {
    if (!left.delete(seed)) continue;
    const group = [seed];
    for (const name of group)
      for (const other of left)
        if (excludes(name, other)) {
          left.delete(other);
          group.push(other);
        }
    if (group.length > 1) groups.push(names.filter((name) => group.includes(name)));
  }
  return groups;
}
