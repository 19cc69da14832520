import { nutFor } from "../model/stock/nut-for.ts";
import type { Nut, Screw, Slot, Stock } from "../model/stock/stock.ts";
import type { Body } from "./bodies.ts";

/** A screw that is not named is as thick as this share of the pitch of the bar: 8 mm at 40 mm. */
export const SCREW_SHARE = 0.2;
/** The tip of a screw stays this far from the slot floor, m (docs/stock-format.md, screw lengths). */
const TIP = 0.0005;
/** Sheets are put on with low heads; where stock has none, with cap heads. */
const HEADS: readonly Screw["head"][] = ["button", "cap"];

/**
 * The screw taken for a sheet whose file names none: of the threads that have a nut for the slot the one nearest to a fifth of the
 * pitch, a low head, the shortest that fills its nut and stays off the slot floor. Undefined where stock has none.
 */
export function usualSheetScrew(
  stock: Stock,
  { bar: { profile } }: Body,
  slot: Slot,
  thickness: number,
  kind: Nut["kind"],
): Screw | undefined {
  const wanted = SCREW_SHARE * profile.pitch;
  const fits = (screw: Screw): boolean => {
    const nut = nutFor(stock, profile.slotSize, screw.thread, kind);
    const below = screw.length - thickness;
    return nut !== undefined && below >= slot.lip + nut.engagement && below <= slot.depth - TIP;
  };
  const order = (a: Screw, b: Screw): number =>
    Math.abs(a.diameter - wanted) - Math.abs(b.diameter - wanted) ||
    HEADS.indexOf(a.head) - HEADS.indexOf(b.head) ||
    a.length - b.length ||
    (a.name < b.name ? -1 : 1);
  return [...stock.screws.values()].filter((screw) => HEADS.includes(screw.head) && fits(screw)).sort(order)[0];
}
