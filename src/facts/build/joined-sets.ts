import type { ScrewedPart } from "../placed.ts";
import { isHeld } from "./steps.ts";

/**
 * Sets of bars of a piece that its own joints hold to each other, in their order. A piece with more than one is not rigid in itself: only
 * the slots round its sheets keep it together, until the frame's joints do.
 */
export function joinedSets(
  bars: readonly string[],
  parts: readonly string[],
  connectors: readonly ScrewedPart[],
): readonly (readonly string[])[] {
  const there = new Set(parts);
  const setOf = new Map<string, Set<string>>(parts.map((part) => [part, new Set([part])]));
  for (const connector of connectors) {
    if (!isHeld(connector, there)) continue;
    const { holds, sheet } = connector;
    const joined = [...holds.map((hold) => hold.bar), ...(sheet ? [sheet.id] : [])];
    const whole = new Set(joined.flatMap((part) => [...(setOf.get(part) ?? [])]));
    for (const part of whole) setOf.set(part, whole);
  }
  return [...new Set(bars.map((bar) => setOf.get(bar)))].map((set) => bars.filter((bar) => set?.has(bar)));
}
