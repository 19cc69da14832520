import { opposed } from "./combinations.ts";
import type { View } from "./response.ts";

/** The same combination leaning, leant on or pushed the other way, with the same joints; none where the frame lifts off its feet then. */
export function opposite(view: View, views: readonly View[]): View | undefined {
  return views.find((other) => other.bound === view.bound && opposed(view.combination, other.combination));
}
