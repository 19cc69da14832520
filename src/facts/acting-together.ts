import type { Acting } from "./acting.ts";
import { type Effect, type Parts, type Picked, pickAdverse, type Roamer } from "./adverse.ts";
import { fullestSets } from "./compatible-sets.ts";
import type { Excludes } from "./excluding.ts";
import { MIDDLE } from "./roaming-places.ts";

/** Cases that act together, each load that roams at one place of its own. */
export interface Choice {
  readonly names: readonly string[];
  /** The names, of loads that roam with their places. */
  readonly said: readonly string[];
  readonly indices: readonly number[];
}

interface Choices {
  /** Each variable case alone, then every fullest set. */
  readonly all: readonly Choice[];
  /** Sets to which no further variable case can be added: all of them, or two for each case where there are too many. */
  readonly fullest: readonly Choice[];
  /**
   * Fullest sets of three less one case each, for what is left out may be what held another part of the frame down; of more cases or
   * more loads that roam what is worst for some part of the frame.
   */
  readonly patterns: readonly Choice[];
  readonly accidental: readonly Choice[];
}

/** Where a load that roams is; a bar is named where several loads of a case roam. */
const onBar = (place: string, bar: string): string =>
  place.endsWith("end") ? `${place} of ${bar}` : `${place} ${bar}`;

/** More fullest sets than these are not all tried: each is solved leaning four ways with three stiffnesses of joints. */
const MOST_SETS = 16;
/** More places of several loads that roam at once, and more patterns of cases, are not tried. */
const MOST_PLACES = 6;
const MOST_PATTERNS = 16;
/** Of so many cases each alone, each left out and all are every pattern there is. */
const ALL_PATTERNS = 3;

/** The parts of every load case, by its name. */
function partsOf({ cases }: Acting): ReadonlyMap<string, Parts> {
  const parts = new Map<
    string,
    { name: string; still: number[]; roamers: { acts: number[]; at: Roamer["at"][number][] }[] }
  >();
  for (const [i, { name, roams }] of cases.entries()) {
    const own = parts.get(name) ?? { name, still: [], roamers: [] };
    parts.set(name, own);
    if (!roams) own.still.push(i);
    else {
      own.roamers[roams.load] ??= { acts: [], at: [] };
      own.roamers[roams.load]?.acts.push(i);
      own.roamers[roams.load]?.at.push(roams.at);
    }
  }
  return parts;
}

/** Sets of cases that may act together. `influence` is what each acting case does by itself, where that can be said. */
export function together(known: Acting, excludes: Excludes, influence: () => readonly Effect[] | undefined): Choices {
  const namesOf = (kind: Acting["cases"][number]["kind"]): readonly string[] => [
    ...new Set(known.cases.filter((c) => c.kind === kind).map((c) => c.name)),
  ];
  const permanent = known.cases.flatMap((c, i) => (c.kind === "permanent" ? [i] : []));
  const parts = partsOf(known);
  const of = (names: readonly string[]): readonly Parts[] =>
    names.flatMap((name) => {
      const own = parts.get(name);
      return own ? [own] : [];
    });
  const roaming = (names: readonly string[]): number =>
    of(names).reduce((count, { roamers }) => count + roamers.length, 0);
  const choice = (names: readonly string[], indices: Picked): Choice => ({
    names,
    indices,
    said: names.map((name) => {
      const places = indices.flatMap((i) => {
        const one = known.cases[i];
        return one?.name === name && one.roams ? [one.roams] : [];
      });
      const [only] = places;
      if (!only) return name;
      const words = places.map((place) => onBar(place.words, place.bar));
      return places.length === 1 ? `${name} ${only.words}` : `${name} (${words.join(", ")})`;
    }),
  });
  /** All of these, with loads that roam each at the places that are worst for some part of the frame. */
  const choose = (names: readonly string[]): readonly Choice[] => {
    const own = of(names);
    const at = (place: number): Picked =>
      own.flatMap(({ still, roamers }) => [...still, ...roamers.flatMap(({ acts }) => acts[place] ?? [])]);
    if (roaming(names) === 0) return [choice(names, at(0))];
    const [only] = own.flatMap(({ roamers }) => roamers);
    if (only && roaming(names) === 1) return only.acts.map((_, place) => choice(names, at(place)));
    const start = [at(MIDDLE)];
    const picked = pickAdverse(
      influence() ?? [],
      permanent,
      { sets: [own], whole: true },
      { start, limit: MOST_PLACES },
    );
    return [...start, ...picked.map(({ acts }) => acts)].map((indices) => choice(names, indices));
  };
  const names = namesOf("variable");
  const sets = fullestSets(names, excludes, MOST_SETS);
  const less = new Map<string, readonly string[]>();
  for (const set of sets) {
    if (set.length !== ALL_PATTERNS) continue;
    for (const left of set) {
      const rest = set.filter((name) => name !== left);
      if (roaming(rest) <= 1) less.set(JSON.stringify(rest), rest);
    }
  }
  const alone = names.flatMap((name) => choose([name]));
  const several = sets.filter((set) => set.length > 1).flatMap(choose);
  const single = sets.filter((set) => set.length === 1).flatMap(choose);
  const lessOne = [...less.values()].flatMap(choose);
  const many = sets.some((set) => set.length > ALL_PATTERNS || (set.length === ALL_PATTERNS && roaming(set) > 1));
  const start = [...alone, ...several, ...lessOne].map(({ indices }) => indices);
  const worst = many
    ? pickAdverse(influence() ?? [], permanent, { sets: sets.map(of), whole: false }, { start, limit: MOST_PATTERNS })
    : [];
  return {
    all: [...alone, ...several],
    fullest: [...single, ...several],
    patterns: [...lessOne, ...worst.map(({ names: those, acts }) => choice(those, acts))],
    accidental: namesOf("accidental").flatMap((name) => choose([name])),
  };
}
