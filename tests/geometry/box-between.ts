import { type Prism, prismFromBox } from "../../src/geometry/prism.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";

/** A box along the axes between two of its corners, m. */
export const boxBetween = (low: Vec3, high: Vec3): Prism =>
  prismFromBox({
    centre: [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2],
    axes: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    half: [(high[0] - low[0]) / 2, (high[1] - low[1]) / 2, (high[2] - low[2]) / 2],
  });
