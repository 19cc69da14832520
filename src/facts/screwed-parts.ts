import { normalise } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import type { Ref } from "../model/ref.ts";
import type { FaceName } from "../model/stock/stock.ts";
import { type Body, bodies } from "./bodies.ts";
import { contacts } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { sitsInSlot } from "./landing.ts";
import { placeCrossing } from "./place-crossing.ts";
import { placeLeaves, type Unplaced } from "./place-leaves.ts";
import { placeSheetScrews, type Stretch } from "./place-sheet-screws.ts";
import { placeTie } from "./place-tie.ts";
import type { InSlot, ScrewedPart } from "./placed.ts";
import { placements } from "./placements.ts";
import { sheets } from "./sheets.ts";
import { inTube } from "./tubes.ts";

export interface ScrewedParts {
  /** Everything that holds screws. */
  readonly all: readonly ScrewedPart[];
  /** What no joint or fastening has put there: screws of ties, pivots, hinges, latches and sheets on faces. */
  readonly free: readonly ScrewedPart[];
  /** Pivots, hinges and latches of which the file does not say where their leaves lie. */
  readonly unplaced: readonly Unplaced[];
}

/** Room for a screw's head, M8 at most, m: so far a screw of a sheet keeps off bars that stand on the same face, and so near they count. */
const HEAD = 0.008;

/** What a part fills of the slots: nuts, heads behind the lips, end fasteners. */
export function fillsSlots({ inSlots, screws }: ScrewedPart): readonly InSlot[] {
  const nuts = screws.flatMap(({ into }): InSlot[] => {
    if (into.kind !== "nut" || !into.nut || !sitsInSlot(into.landing)) return [];
    const { bar, face, slot, station } = into.landing;
    const half = into.nut.length / 2;
    const [from, to] = [station - half, station + half];
    return [{ bar, face, slot: slot?.number ?? 0, by: into.ref, what: "nut", from, to }];
  });
  return [...inSlots, ...nuts];
}

/** Pivots, and hinges and latches of doors, with leaves: where they lie, and those that have no place. */
function leavesOf(
  frame: Frame,
  all: ReadonlyMap<string, Body>,
): { readonly placed: readonly ScrewedPart[]; readonly unplaced: readonly Unplaced[] } {
  const [parts, unplaced]: [ScrewedPart[], Unplaced[]] = [[], []];
  const place = (
    id: string,
    joint: Ref,
    axis: Frame["pivots"][number]["axis"],
    one: Frame["doors"][number]["hinges"][number],
  ): void => {
    const [a, b] = one.bars.map((bar) => all.get(bar));
    const { part, at } = one;
    if (!a || !b || (part.kind !== "hinge" && part.kind !== "pivot")) return;
    const hung = placeLeaves(frame, { id, joint, part, bars: [a, b], at, axis: normalise(axis) });
    if (!hung) return;
    if ("lack" in hung) unplaced.push(hung);
    else parts.push(hung);
  };
  for (const pivot of frame.pivots) place(`${pivot.ref.id}/1`, pivot.ref, pivot.axis, pivot);
  for (const { ref, axis, hinges, latch } of frame.doors) {
    for (const [i, hinge] of hinges.entries()) place(`${ref.id}/hinge-${i + 1}`, ref, axis, hinge);
    if (latch) place(`${ref.id}/latch`, ref, axis, latch);
  }
  return { placed: parts, unplaced };
}

/** Everything with screws where it comes to lie: connectors of joints and fastenings, ties, pivots, hinges, latches, screws of sheets. */
export const screwedParts = defineFact<
  ScrewedParts,
  { bodies: typeof bodies; contacts: typeof contacts; placements: typeof placements; sheets: typeof sheets }
>({
  id: "screwed-parts",
  needs: { bodies, contacts, placements, sheets },
  compute({ bodies: all, contacts: touching, placements: placed, sheets: laid }, frame) {
    const free: ScrewedPart[] = [];
    for (const tie of frame.ties) {
      const [a, b] = [all.get(tie.bars[0]), all.get(tie.bars[1])];
      if (a && b) free.push(...placeTie(frame, tie, a, b, touching.of(tie.bars[0])));
    }
    for (const pivot of frame.pivots) {
      const [a, b] = [all.get(pivot.bars[0]), all.get(pivot.bars[1])];
      if (a && b && pivot.part.kind === "side-tie")
        free.push(...placeCrossing(frame, pivot, a, b, touching.of(pivot.bars[0])));
    }
    const leaves = leavesOf(frame, all);
    free.push(...leaves.placed);
    const filled = new Map<string, Stretch[]>();
    const fill = (parts: readonly ScrewedPart[]): void => {
      for (const { bar, face, slot, from, to } of parts.flatMap(fillsSlots)) {
        const key = `${bar} ${face}${slot}`;
        filled.set(key, [...(filled.get(key) ?? []), [from, to]]);
      }
    };
    // Under a bar that stands on the face no screw has a place, nor its head beside it.
    const covered = (bar: string, face: FaceName): readonly Stretch[] => {
      const own = all.get(bar);
      if (!own) return [];
      return touching.of(bar).flatMap(({ a, overlap, gap }): Stretch[] => {
        if (a.side !== face || gap > HEAD || overlap.length === 0) return [];
        const along = overlap.map((point) => inTube(own, point)[0]);
        return [[Math.min(...along) - HEAD, Math.max(...along) + HEAD]];
      });
    };
    const screwed = laid.filter(({ panel: { held } }) => held.kind === "on-face" && held.pitch !== undefined);
    if (screwed.length > 0) fill([...placed.connectors, ...free]);
    for (const sheet of screwed) {
      const rows = placeSheetScrews(frame, sheet, all, (bar, face, slot) => [
        ...(filled.get(`${bar} ${face}${slot}`) ?? []),
        ...covered(bar, face),
      ]);
      fill(rows);
      free.push(...rows);
    }
    return { all: [...placed.connectors, ...free], free, unplaced: leaves.unplaced };
  },
});
