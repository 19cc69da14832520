import type { Vec3 } from "../../geometry/vector.ts";
import type { Hindrance } from "../hindrances.ts";
import type { WaysOut } from "../ways-out.ts";
import { MANNERS, type Path, pathOf } from "./path.ts";
import { strongComponents } from "./strong-components.ts";

/** What is moved as one: a bar, a panel, or a sub-assembly. */
export interface Unit {
  readonly id: string;
  readonly parts: readonly string[];
  /** What comes off first: the greater, number by number. */
  readonly rank: readonly number[];
  /** It has feet of its own to stand on. */
  readonly stands: boolean;
  /** It waits until the frame is square and on its feet. */
  readonly late: boolean;
}

/** Units taken off together, and how. */
export interface Removal {
  readonly units: readonly Unit[];
  readonly path: Path | undefined;
  /** All of it lies on a side by then, so that its underside is open. */
  readonly lying: boolean;
}

export interface TakenApart {
  /** In the order they come off; the last one is what the rest was built on. */
  readonly removals: readonly Removal[];
  /** What keeps itself together whichever way it is pulled; empty where everything came apart. */
  readonly stuck: readonly Unit[];
}

/** A move goes down when its unit vector has less than this upwards. */
const DOWN = -0.5;

/** The hindrances between different units of a set, by the unit they hold. */
class Holding {
  readonly #of = new Map<Unit, { by: Unit; hindrance: Hindrance; stops: readonly boolean[] }[]>();
  readonly #unitOf = new Map<string, Unit>();

  constructor(units: readonly Unit[], hindrances: readonly Hindrance[], ways: readonly Vec3[]) {
    for (const unit of units) for (const part of unit.parts) this.#unitOf.set(part, unit);
    for (const hindrance of hindrances) {
      const [unit, by] = [this.#unitOf.get(hindrance.part), this.#unitOf.get(hindrance.by)];
      if (!unit || !by || unit === by) continue;
      const stops = ways.map((way) => hindrance.stops(way));
      const known = this.#of.get(unit);
      if (known) known.push({ by, hindrance, stops });
      else this.#of.set(unit, [{ by, hindrance, stops }]);
    }
  }

  /** Units that keep a unit from moving one of the ways. */
  *stopping(unit: Unit, way: number, there: ReadonlySet<Unit>, gently: boolean): Generator<Unit> {
    for (const { by, hindrance, stops } of this.#of.get(unit) ?? []) {
      if (stops[way] !== true || !there.has(by) || (hindrance.soft && !gently)) continue;
      const counts = hindrance.while.every((list) =>
        list.some((part) => {
          const holder = this.#unitOf.get(part);
          return holder !== undefined && there.has(holder);
        }),
      );
      if (counts) yield by;
    }
  }

  free(unit: Unit, way: number, there: ReadonlySet<Unit>, gently: boolean): boolean {
    return this.stopping(unit, way, there, gently).next().done === true;
  }
}

function comesFirst(a: Unit, b: Unit): number {
  for (const [i, rank] of a.rank.entries()) {
    const other = b.rank[i] ?? 0;
    if (rank !== other) return other - rank;
  }
  return a.id < b.id ? 1 : a.id > b.id ? -1 : 0;
}

/** Whether the units that are left without one hang together, or every piece of them has feet to stand on. */
function staysUp(there: ReadonlySet<Unit>, without: Unit, linked: (unit: Unit) => Iterable<Unit>): boolean {
  const seen = new Set([without]);
  let pieces = 0;
  let standing = 0;
  for (const start of there) {
    if (seen.has(start)) continue;
    seen.add(start);
    let stands = false;
    const queue = [start];
    for (let at = queue.pop(); at; at = queue.pop()) {
      stands ||= at.stands;
      for (const next of linked(at)) {
        if (!there.has(next) || seen.has(next)) continue;
        seen.add(next);
        queue.push(next);
      }
    }
    pieces += 1;
    if (stands) standing += 1;
  }
  return pieces <= 1 || standing === pieces;
}

/** The smallest set of units that can be moved one of the ways together, leaving some behind. */
function smallestSet(
  there: ReadonlySet<Unit>,
  ways: readonly Vec3[],
  holding: Holding,
  gently: boolean,
): { readonly units: readonly Unit[]; readonly way: number } | undefined {
  const all = [...there];
  let best: { units: readonly Unit[]; way: number } | undefined;
  for (const way of ways.keys()) {
    const held = new Map(all.map((unit) => [unit, [...holding.stopping(unit, way, there, gently)]]));
    for (const set of strongComponents(all, (unit) => held.get(unit) ?? [])) {
      const inside = new Set(set);
      if (set.length === all.length || set.some((unit) => held.get(unit)?.some((by) => !inside.has(by)))) continue;
      if (!best || set.length < best.units.length) best = { units: set, way };
    }
  }
  return best;
}

/** What keeps the units of a set, what holds them up, and where they are put together. */
export interface Surroundings {
  readonly hindrances: readonly Hindrance[];
  readonly links: readonly (readonly [string, string])[];
  readonly room: WaysOut;
  /** As it will stand, on the floor; else on a table, any side up. */
  readonly standing: boolean;
}

/**
 * Takes a set of units apart by straight moves, one at a time where one is free, else the smallest set that is free
 * together: built the other way round, this is an order of assembly. What comes out straight, the whole way, goes before what comes out in two
 * legs, that before what comes out downwards once the rest is laid on a side, and last what is free for a small move only and has to be turned past
 * others. Of each manner a unit goes first if its rank is greatest among those that are free and leave the rest standing.
 */
export function takeApart(units: readonly Unit[], surroundings: Surroundings): TakenApart {
  const upright = takenApart(units, surroundings, false);
  // What lies for one of its parts lies for all of them: it is stood up once, when nothing in it is loose.
  return upright.removals.some((removal) => removal.lying) ? takenApart(units, surroundings, true) : upright;
}

function takenApart(
  units: readonly Unit[],
  { hindrances, links, room, standing }: Surroundings,
  lyingFirst: boolean,
): TakenApart {
  const { ways } = room;
  const holding = new Holding(units, hindrances, ways);
  const unitOf = new Map(units.flatMap((unit) => unit.parts.map((part) => [part, unit] as const)));
  const linked = new Map<Unit, Set<Unit>>(units.map((unit) => [unit, new Set()]));
  for (const [a, b] of links) {
    const [p, q] = [unitOf.get(a), unitOf.get(b)];
    if (!p || !q || p === q) continue;
    linked.get(p)?.add(q);
    linked.get(q)?.add(p);
  }
  const sorted = [...units].sort(comesFirst);
  const there = new Set(sorted);
  const parts = new Set(sorted.flatMap((unit) => unit.parts));
  const removals: Removal[] = [];
  let lying = false;
  const take = (removal: Removal): void => {
    removals.push(removal);
    lying = removal.lying;
    for (const unit of removal.units) {
      there.delete(unit);
      for (const part of unit.parts) parts.delete(part);
    }
  };
  /** How some units come off one of these ways, in the best manner of these. */
  const removalOf = (together: readonly Unit[], free: readonly number[], manners = MANNERS): Removal | undefined => {
    const own = together.flatMap((unit) => unit.parts);
    for (const manner of manners) {
      const path = pathOf(own, free, manner, parts, standing && !lying, room);
      if (path) return { units: together, path, lying: lying || manner === "lying" };
    }
    return undefined;
  };
  /** The next unit to come off: the first that leaves the rest standing, else the first that is free at all. */
  const single = (gently: boolean, fromBelow: boolean): Removal | undefined => {
    const known = new Map<Unit, readonly number[]>();
    const freeOf = (unit: Unit): readonly number[] => {
      // What is heavy is lowered in or brought from a side, not held up from below.
      const heavy = standing && !lying && !fromBelow && unit.parts.length > 1;
      const free =
        known.get(unit) ??
        [...ways.keys()].filter(
          (way) => !(heavy && (ways[way]?.[2] ?? 0) < DOWN) && holding.free(unit, way, there, gently),
        );
      known.set(unit, free);
      return free;
    };
    let any: Removal | undefined;
    for (const manner of MANNERS) {
      for (const unit of sorted) {
        if (!there.has(unit)) continue;
        const free = freeOf(unit);
        const removal = free.length > 0 ? removalOf([unit], free, [manner]) : undefined;
        if (!removal) continue;
        if (staysUp(there, unit, (at) => linked.get(at) ?? [])) return removal;
        any ??= removal;
      }
    }
    return any;
  };
  const set = (gently: boolean): Removal | undefined => {
    const found = smallestSet(there, ways, holding, gently);
    return found && removalOf(found.units, [found.way]);
  };
  while (there.size > 1) {
    lying ||= lyingFirst && ![...there].some((unit) => unit.late);
    const next = single(true, false) ?? single(true, true) ?? set(true) ?? single(false, true) ?? set(false);
    if (!next) return { removals, stuck: sorted.filter((unit) => there.has(unit)) };
    take(next);
  }
  if (there.size > 0) take({ units: [...there], path: undefined, lying });
  return { removals, stuck: [] };
}
