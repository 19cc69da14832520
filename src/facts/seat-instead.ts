import { type Si, si } from "../model/units/quantity.ts";
import type { Governed } from "./governing.ts";
import type { HeldByFriction } from "./held-by-friction.ts";
import type { Seated } from "./seated.ts";
import { type Friction, worstSlip } from "./slip-use.ts";

/** A joint that hangs, what governs it, and what of it is allowed. */
export interface HangsNear {
  readonly joint: string;
  readonly borne: HeldByFriction;
  readonly friction: Friction;
  readonly governed: Governed<"ratio">;
  readonly allowed: number;
}

/** What a seat would bear, and how much of what they are trusted to hold the screws would be left with. */
export interface SeatInstead {
  readonly push: Si<"force">;
  readonly kept: Si<"ratio">;
}

/** From this share of what is allowed on, a joint is compared with its seat: so near, soft joints or more load bring it there. */
export const NEAR = 0.7;

/** Less than this of what screws are trusted to hold is nothing: it hangs on how stiff a seat is taken to be. */
const NOTHING_LEFT = 5e-4;

/** The seated alternative of joints that are near their limit or beyond, all of them seated at once; by the id of the joint. */
export function seatsInstead(seated: Seated, hung: readonly HangsNear[]): ReadonlyMap<string, SeatInstead> {
  const near = hung
    .filter(({ governed, allowed }) => governed.measured >= NEAR * allowed)
    .sort((a, b) => b.governed.measured / b.allowed - a.governed.measured / a.allowed);
  const found = new Map<string, SeatInstead>();
  if (near.length === 0) return found;
  const sitting = seated.together(near.map(({ joint }) => joint));
  for (const one of near) {
    const sits = sitting(one.joint, one.governed.under.combination);
    if (!sits) continue;
    const { use } = worstSlip(one.borne.borne(sits.view), one.friction, sits.view);
    found.set(one.joint, { push: si(sits.push, "force"), kept: si(use < NOTHING_LEFT ? 0 : use, "ratio") });
  }
  return found;
}
