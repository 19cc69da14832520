import type { Nut, Stock } from "./stock.ts";

/** The nut of this kind for a slot size and a thread; where stock holds several, the first by name. Undefined when there is none. */
export function nutFor(stock: Stock, slotSize: string, thread: string, kind: Nut["kind"]): Nut | undefined {
  let best: Nut | undefined;
  for (const nut of stock.nuts.values()) {
    if (nut.kind !== kind || nut.slotSize !== slotSize || nut.thread !== thread) continue;
    if (best === undefined || nut.name < best.name) best = nut;
  }
  return best;
}
