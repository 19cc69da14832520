import type { FaceName } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";
import type { InSlot } from "./placed.ts";
import { fillsSlots, screwedParts } from "./screwed-parts.ts";

/** Two things in one slot and the free length between them, negative where they overlap, m. */
export interface Neighbours {
  readonly bar: string;
  readonly face: FaceName;
  readonly slot: number;
  readonly a: InSlot;
  readonly b: InSlot;
  readonly free: number;
}

export interface SlotUse {
  readonly occupants: readonly InSlot[];
  readonly neighbours: readonly Neighbours[];
}

/** A free length nearer to none than this is rounding, m: parts that touch do not overlap. */
const NO_LENGTH = 1e-9;

/** What sits in every slot, along the bar: nuts, end fasteners, screw heads. */
export const slotUse = defineFact<SlotUse, { parts: typeof screwedParts }>({
  id: "slot-use",
  needs: { parts: screwedParts },
  compute({ parts }) {
    const occupants = parts.all.flatMap(fillsSlots);
    const lines = new Map<string, InSlot[]>();
    for (const occupant of occupants) {
      const key = `${occupant.bar} ${occupant.face}${occupant.slot}`;
      const line = lines.get(key);
      if (line) line.push(occupant);
      else lines.set(key, [occupant]);
    }
    const neighbours: Neighbours[] = [];
    for (const line of lines.values()) {
      line.sort((p, q) => p.from - q.from || p.to - q.to);
      let furthest = line[0];
      for (const next of line.slice(1)) {
        if (!furthest) break;
        const free = next.from - furthest.to;
        neighbours.push({
          bar: next.bar,
          face: next.face,
          slot: next.slot,
          a: furthest,
          b: next,
          free: Math.abs(free) < NO_LENGTH ? 0 : free,
        });
        if (next.to > furthest.to) furthest = next;
      }
    }
    return { occupants, neighbours };
  },
});
