import type { EndName, Ref } from "../model/ref.ts";
import type { FaceName, Nut } from "../model/stock/stock.ts";
import { type BuildOrder, buildOrder } from "./build-order.ts";
import { comesBuilt } from "./comes-built.ts";
import { defineFact } from "./fact.ts";
import { sitsInSlot } from "./landing.ts";
import { screwedParts } from "./screwed-parts.ts";
import { slotEnds } from "./slot-ends.ts";

/** How a nut comes into its slot. */
export interface NutEntry {
  readonly ref: Ref<"nut">;
  readonly connector: Ref<"connector">;
  readonly nut: Nut;
  readonly bar: string;
  readonly face: FaceName;
  readonly slot: number;
  /** Along the bar from its drawn from point, m. */
  readonly station: number;
  /**
   * Turned in from the face; pushed in past an end that is still open when its connector goes on; or laid in before the step
   * that closes the second end.
   */
  readonly by: "face" | "open end" | "preload";
  /** Number of the step that closes the slot for good, and what closes it then; none where an end stays open. */
  readonly closed?: { readonly step: number; readonly with: readonly Ref[] };
  /** The piece that comes put together and has its slot closed already. */
  readonly trappedBy?: Ref;
  /** The piece that it comes in, laid in already. */
  readonly comesIn?: Ref;
}

/** The slot of one bar. */
export const slotKey = (bar: string, face: FaceName, slot: number): string => `${bar} ${face}${slot}`;

interface Closing {
  readonly step: number;
  readonly with: readonly Ref[];
}

/** When an end of a slot is shut, and by what; undefined where it stays open. */
function closingOf(parts: readonly Ref[], order: BuildOrder): Closing | undefined {
  let found: { step: number; with: Ref[] } | undefined;
  for (const part of parts) {
    const step = order.placedAt(part.id);
    if (step === undefined) continue;
    if (!found || step < found.step) found = { step, with: [part] };
    else if (step === found.step) found.with.push(part);
  }
  return found;
}

/** For every nut when and how it enters its slot. */
export const nutEntries = defineFact<
  readonly NutEntry[],
  { parts: typeof screwedParts; order: typeof buildOrder; slots: typeof slotEnds; came: typeof comesBuilt }
>({
  id: "nut-entries",
  needs: { parts: screwedParts, order: buildOrder, slots: slotEnds, came: comesBuilt },
  compute({ parts, order, slots, came }) {
    const list: NutEntry[] = [];
    for (const connector of parts.all) {
      const joined = order.placedAt(connector.ref.id) ?? 0;
      const piece = came.around(connector);
      for (const { into } of connector.screws) {
        if (into.kind !== "nut" || !into.nut || !sitsInSlot(into.landing)) continue;
        const { bar, face, station, slot } = into.landing;
        const number = slot?.number ?? 0;
        const found = { ref: into.ref, connector: connector.ref, nut: into.nut, bar, face, slot: number, station };
        const ends = (["from", "to"] as const).map((end: EndName) => slots.closing(bar, face, number, end));
        const group = came.pieceOf(bar);
        const inGroup = group !== undefined && piece === group;
        // A foot is screwed off again and lets a nut past.
        const own = (part: Ref): boolean => came.pieceOf(part.id) === group && part.kind !== "stand";
        const shut = ends.every((parts) => parts.some(own));
        const times = ends.map((parts) => closingOf(parts, order));
        const [a, b] = times;
        const last = a && b ? (a.step >= b.step ? a : b) : undefined;
        if (inGroup) list.push({ ...found, by: "preload", comesIn: group.ref });
        else if (into.nut.kind === "drop-in") list.push({ ...found, by: "face" });
        else if (group && shut) list.push({ ...found, by: "preload", trappedBy: group.ref });
        else if (!last) list.push({ ...found, by: "open end" });
        else list.push({ ...found, by: last.step > joined ? "open end" : "preload", closed: last });
      }
    }
    return list;
  },
});
