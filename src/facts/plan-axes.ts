import { length, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import { defineFact } from "./fact.ts";

/** The two level directions in which a frame is pushed and leans, square to each other, and how far they are turned out of x and y. */
export interface PlanAxes {
  readonly directions: readonly [Vec3, Vec3];
  /** "+x", or "+x turned by 37°". */
  words(axis: 0 | 1, sign: 1 | -1): string;
}

const QUARTER = Math.PI / 2;
/** A frame turned by less than this stands along the axes of the drawing. */
const STRAIGHT = Math.PI / 180;
const DEGREE = Math.PI / 180;

/**
 * The way most of its level bars run, by their length: a rack drawn askew gives most along its own bays. Each bar counts by four times
 * its bearing, so that bars square to each other say the same. Frames with no such way take x and y.
 */
export const planAxes = defineFact<PlanAxes, Record<string, never>>({
  id: "plan-axes",
  needs: {},
  compute(_, { bars }) {
    let [along, across] = [0, 0];
    for (const { from, to } of bars) {
      const [x, y] = normalise(subtract(to, from));
      const level = Math.hypot(x, y) * length(subtract(to, from));
      const bearing = 4 * Math.atan2(y, x);
      along += level * Math.cos(bearing);
      across += level * Math.sin(bearing);
    }
    const bearing = Math.atan2(across, along) / 4;
    const turned = Math.abs(bearing) < STRAIGHT || Math.abs(bearing) > QUARTER ? 0 : bearing;
    const [c, s] = [Math.cos(turned), Math.sin(turned)];
    const degrees = Math.round(turned / DEGREE);
    return {
      directions: [
        [c, s, 0],
        [turned === 0 ? 0 : -s, c, 0],
      ],
      words: (axis, sign) =>
        `${sign > 0 ? "+" : "-"}${axis === 0 ? "x" : "y"}${turned === 0 ? "" : ` turned by ${degrees}°`}`,
    };
  },
});
