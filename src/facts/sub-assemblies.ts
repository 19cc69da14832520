import type { Frame } from "../model/frame.ts";
import { type Ref, ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { massBuiltIn, panelsAmong } from "./build/built-in.ts";
import { flatFrames } from "./build/flat-frames.ts";
import { groupParts } from "./comes-built.ts";
import { connections } from "./connections.ts";
import { defineFact } from "./fact.ts";
import { hindrances } from "./hindrances.ts";
import { masses } from "./mass.ts";
import { placements } from "./placements.ts";
import { standings } from "./standings.ts";

/** Parts put together on the table and lifted whole. */
export interface SubAssembly {
  /** The author's group or door, or the name of its first bar. */
  readonly id: string;
  /** Who says so: the author, a door, or trysquare. */
  readonly from: "group" | "door" | "found";
  readonly ref: Ref;
  /** Bars and panels. */
  readonly parts: readonly string[];
  /** It arrives put together. */
  readonly built: boolean;
}

/**
 * Most that is built as one where the author names no groups, kg: two people lift two thirds of what each may alone (common
 * practice), 25 kg (ISO 11228-1).
 */
export const LIFTABLE = (2 * 25 * 2) / 3;

function named(frame: Frame): SubAssembly[] {
  const list: SubAssembly[] = [];
  const hung = new Set(frame.doors.flatMap((door) => [...door.bars, ...door.panels]));
  const grouped = new Set<string>();
  for (const group of frame.groups) {
    const { ref, built } = group;
    const parts = groupParts(frame, group);
    for (const part of parts) grouped.add(part);
    // A single part is no piece of its own, unless something comes on it.
    if (parts.length < (built ? 1 : 2)) continue;
    list.push({ id: ref.id, from: parts.every((part) => hung.has(part)) ? "door" : "group", ref, parts, built });
  }
  for (const door of frame.doors) {
    const parts = [...door.bars, ...door.panels].filter((part) => !grouped.has(part));
    if (parts.length > 1) list.push({ id: door.ref.id, from: "door", ref: door.ref, parts, built: false });
  }
  return list;
}

/** What is built as one: the author's groups, doors, and flat frames found among the bars that are left. */
export const subAssemblies = defineFact<
  readonly SubAssembly[],
  {
    bodies: typeof bodies;
    connections: typeof connections;
    masses: typeof masses;
    hindrances: typeof hindrances;
    placements: typeof placements;
    standings: typeof standings;
  }
>({
  id: "sub-assemblies",
  needs: { bodies, connections, masses, hindrances, placements, standings },
  compute(
    { bodies: all, connections: held, masses: weights, hindrances: { axes }, placements: placed, standings: standing },
    frame,
  ) {
    const list = named(frame);
    const taken = new Set(list.flatMap((one) => one.parts));
    const free = frame.panels.filter((panel) => !taken.has(panel.ref.id));
    const left = frame.bars.map((bar) => bar.ref.id).filter((bar) => !taken.has(bar));
    const frames = flatFrames(left, held.all, axes, {
      bodies: all,
      massOf: massBuiltIn(free, weights, placed, standing),
      liftable: LIFTABLE,
    });
    for (const bars of frames) {
      if (bars.length === frame.bars.length) continue; // that is the frame itself
      const inside = panelsAmong(new Set(bars), free);
      const [first = ""] = bars;
      list.push({
        id: first,
        from: "found",
        ref: ref("bar", first),
        parts: [...bars, ...inside.map((panel) => panel.ref.id)],
        built: false,
      });
    }
    return list;
  },
});
