import type { Vec3 } from "../geometry/vector.ts";

/** What each acting case does to one thing, as it is and the other way: a stress, the force of a joint, the push of a foot. */
export interface Effect {
  /** One for each acting case; superposition adds them. */
  readonly by: Float64Array;
  /** What is lacking of it is measured by this: the largest of its kind in the thing. */
  readonly scale: number;
}

/** One load that roams: its places as acting cases, and where each is, m. */
export interface Roamer {
  readonly acts: readonly number[];
  readonly at: readonly Vec3[];
}

/** What a load case consists of. */
export interface Parts {
  readonly name: string;
  /** Loads that stand still, as acting cases. */
  readonly still: readonly number[];
  readonly roamers: readonly Roamer[];
}

/** Acting cases that act together. */
export type Picked = readonly number[];

/** Those that do most harm somewhere, and the load cases they are of. */
export interface Pattern {
  readonly acts: Picked;
  readonly names: readonly string[];
}

/** Less than this share of the largest effect there is nothing to look for: no other choice is tried for it. */
const NEGLIGIBLE = 0.01;
/** Below this share of each other effects are alike, and where the load is decides. */
const ALIKE = 1e-6;
/** m */
const SAME_PLACE = 1e-6;

const before = (a: Vec3, b: Vec3): boolean => {
  for (const i of [0, 1, 2] as const) if (Math.abs(a[i] - b[i]) > SAME_PLACE) return a[i] < b[i];
  return false;
};

/** The place of a roaming load with the largest value; of such as are alike the first of the plan, however its bar is drawn. */
function worstPlace({ acts, at }: Roamer, value: (act: number) => number): number {
  const alike = ALIKE * acts.reduce((most, act) => Math.max(most, Math.abs(value(act))), 0);
  let best = 0;
  for (const [i, act] of acts.entries()) {
    const more = value(act) - value(acts[best] ?? act);
    const tied = Math.abs(more) <= alike && before(at[i] ?? [0, 0, 0], at[best] ?? [0, 0, 0]);
    if (more > alike || tied) best = i;
  }
  return acts[best] ?? 0;
}

/** What a case comes to with each of its roaming loads where it does most. */
function mostOf({ still, roamers }: Parts, value: (act: number) => number): number {
  let sum = 0;
  for (const act of still) sum += value(act);
  for (const { acts } of roamers) {
    let most = Number.NEGATIVE_INFINITY;
    for (const act of acts) most = Math.max(most, value(act));
    sum += most;
  }
  return sum;
}

/** Sets of cases of which each may act together: all of a set, or those of it that add to an effect. */
interface Sets {
  readonly sets: readonly (readonly Parts[])[];
  readonly whole: boolean;
}

/** What a case adds less than is a matter of rounding. */
interface Rounding {
  readonly least: number;
}

/** What the set comes to that comes to most. */
function envelope({ sets, whole, least }: Sets & Rounding, value: (act: number) => number): number {
  let best = whole ? Number.NEGATIVE_INFINITY : 0;
  for (const set of sets) {
    let sum = 0;
    for (const parts of set) {
      const own = mostOf(parts, value);
      if (whole || own > least) sum += own;
    }
    best = Math.max(best, sum);
  }
  return best;
}

/** That set. */
function adverse({ sets, whole, least }: Sets & Rounding, value: (act: number) => number): Pattern {
  const worth = (set: readonly Parts[]): number => envelope({ sets: [set], whole, least }, value);
  const [first = []] = sets;
  const best = sets.reduce((a, b) => (worth(b) > worth(a) + ALIKE * Math.abs(worth(a)) ? b : a), first);
  const those = best.filter((parts) => whole || mostOf(parts, value) > least);
  return {
    names: those.map(({ name }) => name),
    acts: those.flatMap(({ still, roamers }) => [...still, ...roamers.map((roamer) => worstPlace(roamer, value))]),
  };
}

/**
 * Choices beside those already there, each the worst for some effect: by influence, so exact while no contact opens. The effect that the
 * choices fall shortest of is served first, with all that fall short alike, until all come within 1 % or there are `limit` more. `always` acts in every choice.
 */
export function pickAdverse(
  effects: readonly Effect[],
  always: Picked,
  from: Sets,
  { start, limit }: { readonly start: readonly Picked[]; readonly limit: number },
): readonly Pattern[] {
  const sumOf = (acts: Picked, value: (act: number) => number): number => {
    let sum = 0;
    for (const act of acts) sum += value(act);
    return sum;
  };
  const rows = effects.flatMap(({ by, scale }) =>
    ([1, -1] as const).flatMap((sign) => {
      const value = (act: number): number => sign * (by[act] ?? 0);
      const least = ALIKE * scale;
      const most = envelope({ ...from, least }, value);
      // What no choice makes worse than nothing is no matter of choosing.
      if (sumOf(always, value) + most <= 0) return [];
      let reached = from.whole ? Number.NEGATIVE_INFINITY : 0;
      for (const acts of start) reached = Math.max(reached, sumOf(acts, value));
      return most - reached > NEGLIGIBLE * scale ? [{ value, most, reached, scale, least }] : [];
    }),
  );
  const picked: Pattern[] = [];
  while (picked.length < limit) {
    const lacks = rows.map(({ most, reached, scale }) => (most - reached) / scale);
    const most = lacks.reduce((a, b) => Math.max(a, b), 0);
    if (most <= NEGLIGIBLE) break;
    // All that fall short alike are served at once: of a frame alike on both sides neither side comes first.
    const those = new Map<string, Pattern>();
    for (const [i, { value, least }] of rows.entries()) {
      if ((lacks[i] ?? 0) < most * (1 - ALIKE)) continue;
      const pattern = adverse({ ...from, least }, value);
      those.set(pattern.acts.join(), pattern);
    }
    for (const pattern of those.values()) {
      picked.push(pattern);
      for (const row of rows) row.reached = Math.max(row.reached, sumOf(pattern.acts, row.value));
    }
  }
  return picked;
}
