import type { Vec3 } from "../geometry/vector.ts";
import type { Ref } from "../model/ref.ts";
import { barWork, type Operation } from "./bar-work.ts";
import { comesBuilt } from "./comes-built.ts";
import { defineFact } from "./fact.ts";
import { gathered, masses } from "./mass.ts";
import { placements } from "./placements.ts";

/** A piece that arrives put together, as it is taken in. */
export interface Arrival {
  readonly ref: Ref;
  /** kg, with its connectors and the feet and equipment that come on it. */
  readonly mass: number;
  /** m, in the finished frame. */
  readonly centre: Vec3;
  /** Bars and panels. */
  readonly parts: readonly string[];
  /** What joints to other parts still ask for, on its bars. */
  readonly work: readonly { readonly bar: string; readonly operations: readonly Operation[] }[];
}

/** Pieces that come built: what they weigh, and what is left to do to them before they go in. */
export const arrivals = defineFact<
  readonly Arrival[],
  { came: typeof comesBuilt; masses: typeof masses; placements: typeof placements; work: typeof barWork }
>({
  id: "arrivals",
  needs: { came: comesBuilt, masses, placements, work: barWork },
  compute({ came, masses: weights, placements: placed, work }) {
    const inside = new Map(placed.connectors.map((one) => [one.ref.id, came.around(one)] as const));
    return came.all.map((piece) => {
      const own = [...weights.own, ...weights.fixed].filter(
        ({ ref }) => (came.pieceOf(ref.id) ?? inside.get(ref.id)) === piece,
      );
      const bars = piece.parts.flatMap((bar) => {
        const operations = work.get(bar) ?? [];
        return operations.length > 0 ? [{ bar, operations }] : [];
      });
      return { ref: piece.ref, parts: piece.parts, ...gathered(own), work: bars };
    });
  },
});
