import type { Ref } from "../model/ref.ts";
import { bodies } from "./bodies.ts";
import { massBuiltIn } from "./build/built-in.ts";
import { flatFrames } from "./build/flat-frames.ts";
import { buildOrder } from "./build-order.ts";
import { connections } from "./connections.ts";
import { defineFact } from "./fact.ts";
import { hindrances } from "./hindrances.ts";
import { masses } from "./mass.ts";
import { placements } from "./placements.ts";
import { standings } from "./standings.ts";
import { LIFTABLE } from "./sub-assemblies.ts";

/** A screw tightened on the standing frame though its joint lies in a flat frame that could have been built on the bench. */
export interface HighWork {
  readonly screw: Ref<"screw">;
  /** Of the head over the floor, m. */
  readonly height: number;
}

/** Work that is done standing up and need not be. */
export const highWork = defineFact<
  readonly HighWork[],
  {
    bodies: typeof bodies;
    order: typeof buildOrder;
    placements: typeof placements;
    connections: typeof connections;
    masses: typeof masses;
    hindrances: typeof hindrances;
    stands: typeof standings;
  }
>({
  id: "high-work",
  needs: { bodies, order: buildOrder, placements, connections, masses, hindrances, stands: standings },
  compute(
    { bodies: all, order, placements: placed, connections: held, masses: weights, hindrances: { axes }, stands },
    frame,
  ) {
    const standing = order.steps.filter((step) => step.assembly === "").flatMap((step) => step.connectors);
    const done = new Set(standing.map((connector) => connector.id));
    const massOf = massBuiltIn(frame.panels, weights, placed, stands);
    const setting = { bodies: all, massOf, liftable: LIFTABLE };
    const names = frame.bars.map((bar) => bar.ref.id);
    // The frame itself, lying on the table whole, is no sub-assembly.
    const frames = flatFrames(names, held.all, axes, setting).filter((set) => set.length < names.length);
    const inFlat = (bars: readonly string[]): boolean => frames.some((set) => bars.every((bar) => set.includes(bar)));
    const list: HighWork[] = [];
    let standingAnyway = 0;
    for (const connector of placed.connectors) {
      const flat = inFlat(connector.holds.map((hold) => hold.bar));
      if (!flat) standingAnyway += 1;
      if (!flat || !done.has(connector.ref.id)) continue;
      for (const screw of connector.screws)
        list.push({ screw: screw.ref, height: screw.drive.point[2] - frame.floor.z });
    }
    // Other flat frames that leave as much to do standing up are no better.
    if (standingAnyway >= done.size) return [];
    return list;
  },
});
