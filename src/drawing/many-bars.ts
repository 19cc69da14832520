/** A frame of more bars than this is drawn coarser: what makes a smaller one plain would be specks here, and too many to turn. */
export const MANY_BARS = 400;

/** Places along a line, evenly spaced with both ends, at most this many of those given. */
export function thinned<T>(list: readonly T[], most: number): readonly T[] {
  if (list.length <= most) return list;
  return Array.from({ length: most }, (_, i) => list[Math.round((i * (list.length - 1)) / (most - 1))] as T);
}
