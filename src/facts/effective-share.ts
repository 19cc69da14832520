import { thicknessReduction } from "../mechanics/design/local-buckling.ts";
import type { Material, Profile } from "../model/stock/stock.ts";

/**
 * Share of the section that counts before its thin walls buckle, EN 1999-1-1:2007, 6.1.5: the skin over a closed slot as a
 * part held along both edges, the lips of an open one as outstands. The smallest share is taken for the whole section. Webs
 * between cells are not described by stock and not looked at.
 */
export function effectiveShare(profile: Profile, material: Material): number {
  const fo = material.proof / 1e6;
  let share = 1;
  for (const slot of profile.slots) {
    if (!(slot.lip > 0)) continue;
    const reduction = slot.closed
      ? thicknessReduction(slot.cavity / slot.lip, fo, "internal", material.bucklingClass)
      : thicknessReduction((slot.cavity - slot.opening) / 2 / slot.lip, fo, "outstand", material.bucklingClass);
    share = Math.min(share, reduction);
  }
  return share;
}
