/** Changed frames that are inspected a file in search of cures when nothing is said: a second or two of work on a usual frame. */
const USUAL = 16;
/**
 * Bars in all those copies together. A whole inspection takes about as long a bar, a large one longer, and each copy is one: so many bars
 * take about a minute, and no frame takes much more than twice as long with its cures as without once it has more of them.
 */
const BARS_TRIED = 1600;

/** More than so many copies of one frame are never tried. */
export const MOST_TRIED = 1000;

/**
 * Changed frames to try: as many as were asked for, or the usual number for a frame of so many bars, none of a frame that is more than
 * twice as large as all copies together. The clock has no part in it.
 */
export function cureBudget(asked: number | "usual", bars: number): number {
  if (asked !== "usual") return asked;
  return Math.min(USUAL, Math.floor(BARS_TRIED / Math.max(1, bars) + 0.5));
}
