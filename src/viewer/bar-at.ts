import type { ModelData } from "../drawing/model3d/model-data.ts";
import { fibre } from "./mesh.ts";
import type { Vec } from "./vec.ts";

/** A finger's breadth, pixels. */
const NEAR = 16;

/** The bar nearest to a point of the picture, −1 where none is near; `seen` puts points of the frame on the picture. */
export function barAt(
  model: ModelData,
  [x, y]: readonly [number, number],
  seen: (p: Vec) => readonly [number, number],
) {
  let [best, nearest] = [-1, NEAR];
  model.bars.forEach((bar, i) => {
    const { from, to } = fibre(bar, 0, 0);
    const [a, b] = [seen(from), seen(to)];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy || 1)));
    const distance = Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
    if (distance < nearest) [best, nearest] = [i, distance];
  });
  return best;
}
