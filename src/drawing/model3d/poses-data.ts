import type { LoadPath } from "../../facts/load-paths.ts";
import type { MovingShape } from "../../facts/moving-shapes.ts";
import { MANY_BARS } from "../many-bars.ts";
import type { PoseData } from "./model-data.ts";

/** The shape and the load path that a finding belongs to, where it has them. */
export interface Pose {
  /** "3.2" */
  readonly finding: string;
  readonly shape: MovingShape | undefined;
  readonly path: LoadPath | undefined;
}

/** Shapes that only findings need, at most; one of a frame with more bars than this, where each is large. */
const OWN = 8;

const same = (a: MovingShape, b: MovingShape): boolean =>
  a.kind === b.kind && a.name === b.name && a.factor === b.factor && a.swings?.side === b.swings?.side;

/** The shapes to be shown, the usual ones first, and which of them and of the paths goes with which finding. */
export function posesData(
  poses: readonly Pose[],
  usual: readonly MovingShape[],
  paths: readonly LoadPath[],
  bars: number,
): { readonly shapes: readonly MovingShape[]; readonly list: readonly PoseData[] } {
  const shapes = [...usual];
  const most = usual.length + (bars > MANY_BARS ? 1 : OWN);
  const placeOf = (shape: MovingShape | undefined): number => {
    if (!shape) return -1;
    const known = shapes.findIndex((one) => same(one, shape));
    if (known >= 0 || shapes.length === most) return known;
    return shapes.push(shape) - 1;
  };
  const list = poses
    .map(({ finding, shape, path }) => ({
      finding,
      shape: placeOf(shape),
      path: paths.findIndex(({ name }) => name === path?.name),
    }))
    .filter(({ shape, path }) => shape >= 0 || path >= 0);
  return { shapes, list };
}
