import { opposed } from "./combinations.ts";
import { fallingViews } from "./falling-views.ts";
import type { SheetBrace } from "./sheet-braces.ts";
import type { View } from "./view.ts";

/** The forces of all couplings, in the order of the sheets, under one sideways combination. */
export interface Racked {
  readonly view: View;
  readonly couplings: Float64Array;
}

/** What a sheet bears of what it can, before the axial forces follow the sway. */
interface Use {
  readonly brace: SheetBrace;
  readonly view: View;
  /** The same, leaning the other way. */
  readonly back: View | undefined;
  readonly use: number;
}

/** EN 1993-1-1:2005 and EN 1999-1-1:2007, 5.2.1: from this α_cr on nothing grows. */
const FIRST_ORDER = 10;

function usesOf(braces: readonly SheetBrace[], racked: readonly Racked[], reserve: number): readonly Use[] {
  return racked.flatMap(({ view, couplings }) => {
    const { combination } = view;
    const back = racked.find((other) => opposed(combination, other.view.combination));
    let at = 0;
    return braces.map((brace): Use => {
      const own = brace.couplings.map((_, i) => {
        const force = couplings[at + i] ?? 0;
        return back ? (force - (back.couplings[at + i] ?? 0)) / 2 : force;
      });
      at += own.length;
      const use = brace.use(own) * (combination.kind === "strength" ? reserve : 1);
      return { brace, view, back: back?.view, use };
    });
  });
}

/**
 * Whether a sheet holds what it bears grown by 1/(1 − 1/α): it does from α = 1/(1 − use) on, and from 10 on nothing grows. α is that of
 * the way in which the frame leans, or of the frame as a whole where it leans one way alone or its feet hold otherwise the other way.
 */
function holds({ view, back, use }: Use, reserve: number): boolean {
  const needed = factorNeeded(use, reserve);
  const { whole, index } = view.solvedAs;
  if (!back || back.solvedAs.whole !== whole) return view.stands(needed);
  return whole.swayFactor(index, back.solvedAs.index) > needed;
}

const factorNeeded = (use: number, reserve: number): number => reserve * Math.min(FIRST_ORDER, 1 / (1 - use));

/**
 * Sheets pressed beyond what they bear by what pushes the frame sideways: half of what differs between pushing it one way and the
 * other, or all where declared loads push one way alone; in strength combinations grown as the axial forces follow the sway. What
 * weight does, and feet that slide, screws give way to and hold on.
 */
export function giving(
  braces: readonly SheetBrace[],
  racked: readonly Racked[],
  reserve: number,
): ReadonlySet<SheetBrace> {
  const uses = usesOf(braces, racked, reserve);
  const beyond = uses.filter(({ use }) => use > 1);
  if (beyond.length > 0) return new Set(beyond.map(({ brace }) => brace));
  const growing = uses.filter(({ view, use }) => view.combination.kind === "strength" && use > 0);
  const most = growing.reduce((largest, { use }) => Math.max(largest, factorNeeded(use, reserve)), 0);
  // Nearly always the frame as a whole is far from buckling, and one factorisation says so.
  const near = new Set(fallingViews([...new Set(growing.map(({ view }) => view))], most));
  return new Set(growing.filter((use) => near.has(use.view) && !holds(use, reserve)).map(({ brace }) => brace));
}
