import type { View } from "./view.ts";

/** Those of several views under which the frame as a whole buckles before its axial forces have grown by this factor, in their order. */
export function fallingViews(views: readonly View[], factor: number): readonly View[] {
  const together = new Map<View["solvedAs"]["whole"], number[]>();
  for (const { solvedAs } of views) {
    const own = together.get(solvedAs.whole);
    if (own) own.push(solvedAs.index);
    else together.set(solvedAs.whole, [solvedAs.index]);
  }
  const falling = new Map([...together].map(([whole, indices]) => [whole, new Set(whole.falling(indices, factor))]));
  return views.filter(({ solvedAs }) => falling.get(solvedAs.whole)?.has(solvedAs.index));
}
