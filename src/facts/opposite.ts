import type { View } from "./response.ts";

/** What it is but for the way it leans or is pushed. */
const laden = ({ combination }: View): string => combination.name.replace(/ along [+-][xy]$/, "");

/** The same combination leaning, leant on or pushed the other way, with the same joints; none where the frame lifts off its feet then. */
export function opposite(view: View, views: readonly View[]): View | undefined {
  const { side } = view.combination;
  if (!side) return undefined;
  return views.find(
    (other) =>
      other.bound === view.bound &&
      other.combination.side?.axis === side.axis &&
      other.combination.side.sign === -side.sign &&
      laden(other) === laden(view),
  );
}
