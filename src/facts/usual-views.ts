import type { View } from "./response.ts";

/** Loads under which the frame is used, joints typical: one view each, in the order they were solved. */
export function usualViews(views: readonly View[]): readonly View[] {
  const seen = new Map<string, View>();
  for (const view of views)
    if (view.combination.kind !== "strength" && view.bound === "typical" && !seen.has(view.combination.name))
      seen.set(view.combination.name, view);
  return [...seen.values()];
}
