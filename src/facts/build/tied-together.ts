import type { SubAssembly } from "../sub-assemblies.ts";
import { assemble, type Built, type Ground } from "./assemble.ts";
import type { Assembly } from "./plan.ts";

/** Bars held side by side, and how heavy a set of them may be to be built as one, kg. */
export interface Tied {
  readonly pairs: readonly (readonly [string, string])[];
  readonly liftable: number;
}

/** Sets of parts that ties hold to each other, in the order of the parts. */
function tiedSets(parts: readonly string[], pairs: Tied["pairs"]): readonly (readonly string[])[] {
  const sets: Set<string>[] = [];
  for (const [a, b] of pairs) {
    if (!parts.includes(a) || !parts.includes(b)) continue;
    const met = sets.filter((set) => set.has(a) || set.has(b));
    const whole = new Set([a, b, ...met.flatMap((set) => [...set])]);
    sets.splice(0, sets.length, ...sets.filter((set) => !met.includes(set)), whole);
  }
  return sets.map((set) => parts.filter((part) => set.has(part)));
}

/**
 * Puts parts together, bars tied side by side first: their screws are turned in through holes that brackets cover later. Where that
 * cannot be done, or the set is too heavy to lift in, they go in one by one.
 */
export function assembleTied(
  id: string,
  sub: SubAssembly | undefined,
  pieces: readonly (string | Assembly)[],
  ground: Ground,
  { pairs, liftable }: Tied,
): Built {
  const single = pieces.filter((piece) => typeof piece === "string");
  const sets = tiedSets(single, pairs).filter((set) => set.length < pieces.length && ground.mass(set) <= liftable);
  const made = sets.map((set) => assemble(`${set[0] ?? ""}+tied`, undefined, set, ground));
  const good = made.filter(({ stuck }) => stuck.length === 0).map(({ assembly }) => assembly);
  if (good.length > 0) {
    const inside = new Set(good.flatMap(({ items }) => items.flatMap(({ parts }) => parts)));
    const rest = pieces.filter((piece) => typeof piece !== "string" || !inside.has(piece));
    const built = assemble(id, sub, [...good, ...rest], ground);
    if (built.stuck.length === 0) return built;
  }
  return assemble(id, sub, pieces, ground);
}
