import { combinations, resultantOf } from "./combinations.ts";
import { defineFact } from "./fact.ts";
import { footing } from "./footing.ts";

/** How hard declared loads push a frame along the floor that nothing but friction holds there. */
export interface Sliding {
  /** The combination in which least is left of that friction. */
  readonly loads: string;
  /** N, sideways, and what friction holds of the weight that then stands on the floor. */
  readonly push: number;
  readonly holds: number;
}

/** Under all loads that may act together, at their own size; undefined where none pushes sideways, and where a stand is anchored or meant to roll. */
export const sliding = defineFact<Sliding | undefined, { combined: typeof combinations; feet: typeof footing }>({
  id: "sliding",
  needs: { combined: combinations, feet: footing },
  compute({ combined: { cases, all }, feet }, frame) {
    if (feet.length === 0 || feet.some(({ hold }) => hold !== "rest")) return undefined;
    let worst: Sliding | undefined;
    const service = all.filter(({ kind }) => kind === "service");
    // Who leans on an empty bench moves it and knows; what acts together is what it has to stand under.
    const fullest = service.filter(
      ({ acts }) =>
        !service.some((other) => other.acts.length > acts.length && acts.every((one) => other.acts.includes(one))),
    );
    for (const { name, across, factors } of fullest) {
      if (!across) continue;
      const [x, y, z] = resultantOf(cases, factors);
      const found = { loads: name, push: Math.hypot(x, y), holds: frame.floor.friction * Math.max(0, -z) };
      if (!worst || found.push * worst.holds > worst.push * found.holds) worst = found;
    }
    return worst;
  },
});
