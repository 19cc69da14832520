import type { Ref } from "../model/ref.ts";
import { defineFact } from "./fact.ts";
import { screwCovers } from "./screw-covers.ts";
import { screwedParts } from "./screwed-parts.ts";

/** A part that stays in front of screws once it is in. */
export interface Burial {
  readonly cover: Ref;
  readonly screws: readonly Ref<"screw">[];
}

/**
 * Screws without a lock that a bar or a panel in slots covers for good. Sheets that are lifted or screwed off and doors that
 * open are no burial.
 */
export const buriedScrews = defineFact<readonly Burial[], { parts: typeof screwedParts; covers: typeof screwCovers }>({
  id: "buried-screws",
  needs: { parts: screwedParts, covers: screwCovers },
  compute({ parts, covers }, frame) {
    const doors = new Map(
      frame.doors.flatMap((door) => [...door.bars, ...door.panels].map((part) => [part, door.ref.id] as const)),
    );
    const stay = new Map<string, Ref>(frame.bars.map((bar) => [bar.ref.id, bar.ref]));
    for (const panel of frame.panels) if (panel.held.kind === "in-slot") stay.set(panel.ref.id, panel.ref);
    const found = new Map<string, Ref<"screw">[]>();
    for (const connector of parts.all) {
      if (connector.choice && connector.choice.lock !== "none") continue;
      const doorOf = (part: string): string | undefined => doors.get(part);
      const own = doorOf(connector.holds[0]?.bar ?? "");
      for (const screw of connector.screws) {
        for (const cover of covers.of(screw.ref.id)) {
          if (!stay.has(cover) || doorOf(cover) !== own) continue;
          const known = found.get(cover);
          if (known) known.push(screw.ref);
          else found.set(cover, [screw.ref]);
        }
      }
    }
    return [...found].flatMap(([cover, screws]) => {
      const ref = stay.get(cover);
      return ref ? [{ cover: ref, screws }] : [];
    });
  },
});
