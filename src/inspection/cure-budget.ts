/** Changed frames that are inspected a file in search of cures when nothing is said: a second or two of work on a usual frame. */
const USUAL = 16;
/** Bars in all those copies together: a whole inspection takes about as long a bar, so a large frame has fewer of them. */
const BARS_TRIED = 6400;
/** Copies that even the largest frame gets. */
const LEAST = 2;

/** Changed frames to try: as many as were asked for, or the usual number for a frame of so many bars. The clock has no part in it. */
export function cureBudget(asked: number | "usual", bars: number): number {
  if (asked !== "usual") return asked;
  return Math.min(USUAL, Math.max(LEAST, Math.round(BARS_TRIED / Math.max(1, bars))));
}
