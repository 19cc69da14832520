import type { Ref } from "../model/ref.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { defineFact } from "./fact.ts";
import { sitsInSlot } from "./landing.ts";
import type { InSlot } from "./placed.ts";
import { placements } from "./placements.ts";

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
export const slotUse = defineFact<SlotUse, { placements: typeof placements }>({
  id: "slot-use",
  needs: { placements },
  compute({ placements: placed }) {
    const occupants: InSlot[] = [];
    for (const connector of placed.connectors) {
      for (const occupant of connector.inSlots) occupants.push(occupant);
      for (const screw of connector.screws) {
        if (screw.into.kind !== "nut" || !screw.into.nut || !sitsInSlot(screw.into.landing)) continue;
        const { landing, nut } = screw.into;
        const half = nut.length / 2;
        occupants.push({
          bar: landing.bar,
          face: landing.face,
          slot: landing.slot?.number ?? 0,
          by: screw.into.ref as Ref,
          what: "nut",
          from: landing.station - half,
          to: landing.station + half,
        });
      }
    }
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
