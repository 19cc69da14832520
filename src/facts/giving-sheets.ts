import { type Combined, opposed } from "./combinations.ts";
import type { SheetBrace } from "./sheet-braces.ts";

/** The forces of all couplings, in the order of the sheets, under one sideways combination. */
export interface Racked {
  readonly combination: Combined;
  readonly couplings: Float64Array;
}

/**
 * Sheets pressed beyond what they bear by what pushes the frame sideways: half of what differs between pushing it one way and the
 * other, or all where declared loads push one way alone. What weight does, and feet that slide, screws give way to and hold on.
 */
export function giving(
  braces: readonly SheetBrace[],
  racked: readonly Racked[],
  reserve: number,
): ReadonlySet<SheetBrace> {
  const given = new Set<SheetBrace>();
  for (const { combination, couplings } of racked) {
    const back = racked.find((other) => opposed(combination, other.combination))?.couplings;
    let at = 0;
    for (const brace of braces) {
      const own = brace.couplings.map((_, i) => {
        const force = couplings[at + i] ?? 0;
        return back ? (force - (back[at + i] ?? 0)) / 2 : force;
      });
      at += own.length;
      if (brace.use(own) * (combination.kind === "strength" ? reserve : 1) > 1) given.add(brace);
    }
  }
  return given;
}
