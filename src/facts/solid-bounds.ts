import type { Bounds3 } from "../geometry/bounds.ts";
import { boxBounds } from "../geometry/box.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";
import { placements } from "./placements.ts";

/** The extent of a bar, named, or of a part of a connector. */
export interface SolidBounds {
  readonly bar: string | undefined;
  readonly bounds: Bounds3;
}

/** How far bars and connectors reach along the axes of the drawing. */
export const solidBounds = defineFact<readonly SolidBounds[], { bodies: typeof bodies; placements: typeof placements }>(
  {
    id: "solid-bounds",
    needs: { bodies, placements },
    compute: ({ bodies: all, placements: { connectors } }) => [
      ...[...all].map(([bar, { bounds }]) => ({ bar, bounds })),
      ...connectors.flatMap(({ solids }) => solids.map((solid) => ({ bar: undefined, bounds: boxBounds(solid) }))),
    ],
  },
);
