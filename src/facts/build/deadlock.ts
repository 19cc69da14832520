import type { Ref } from "../../model/ref.ts";
import type { Hindrance, Hindrances } from "../hindrances.ts";
import type { Deadlock } from "./plan.ts";
import { shortestRing } from "./ring.ts";

interface Kept {
  readonly by: string;
  readonly hindrance: Hindrance;
}

/** What keeps every part one way: the part itself, or whatever covers the screws that hold it. */
function keptOf(parts: ReadonlySet<string>, all: readonly Hindrance[], way: Hindrances["ways"][number]) {
  const kept = new Map<string, Kept[]>();
  for (const hindrance of all) {
    const { part, by, why } = hindrance;
    if (!parts.has(part) || !parts.has(by) || !hindrance.stops(way)) continue;
    if (!hindrance.while.every((list) => list.some((one) => parts.has(one)))) continue;
    const covers = hindrance.while.flat().filter((one) => parts.has(one) && one !== part);
    const list = kept.get(part) ?? [];
    for (const one of why === "covered" ? covers : [by]) list.push({ by: one, hindrance });
    kept.set(part, list);
  }
  return kept;
}

/** Names the shortest ring among parts that keep each other whichever way they are pulled. */
export function deadlockOf(stuck: readonly string[], known: Hindrances, refOf: (part: string) => Ref): Deadlock {
  const parts = new Set(stuck);
  let best: { ring: readonly string[]; kept: ReadonlyMap<string, readonly Kept[]> } | undefined;
  for (const way of known.ways) {
    const kept = keptOf(parts, known.all, way);
    const ring = shortestRing(stuck, (part) => (kept.get(part) ?? []).map(({ by }) => by));
    if (ring && (!best || ring.length < best.ring.length)) best = { ring, kept };
  }
  const ring = (best?.ring ?? []).map((part, i, whole) => {
    const by = whole[(i + 1) % whole.length] ?? part;
    const held = best?.kept.get(part)?.find((one) => one.by === by)?.hindrance;
    return { part: refOf(part), by: refOf(by), why: held?.why ?? ("bears" as const), screws: held?.screws ?? [] };
  });
  return { parts: stuck.map(refOf), ring };
}
