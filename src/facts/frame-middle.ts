import type { Vec3 } from "../geometry/vector.ts";
import { bodies } from "./bodies.ts";
import { defineFact } from "./fact.ts";

/** Middle of the box round all bars, m: what "inner" and "outer" are counted from. */
export const frameMiddle = defineFact<Vec3, { bodies: typeof bodies }>({
  id: "frame-middle",
  needs: { bodies },
  compute({ bodies: all }) {
    const low: [number, number, number] = [Infinity, Infinity, Infinity];
    const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
    for (const { bounds } of all.values()) {
      for (const i of [0, 1, 2] as const) {
        low[i] = Math.min(low[i], bounds.min[i]);
        high[i] = Math.max(high[i], bounds.max[i]);
      }
    }
    return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  },
});
