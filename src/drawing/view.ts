import { cross, dot, normalise, type Vec2, type Vec3 } from "../geometry/vector.ts";

/** Where the eye is, far away, and what it has to its right and above; unit vectors square to each other. */
export interface View {
  readonly name: string;
  /** From the frame to the eye. */
  readonly toward: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
}

/** A view whose eye is in the direction `toward`, with `over` above as near as may be. */
export function viewFrom(name: string, toward: Vec3, over: Vec3): View {
  const eye = normalise(toward);
  const right = normalise(cross(over, eye));
  return { name, toward: eye, right, up: cross(eye, right) };
}

const ZED: Vec3 = [0, 0, 1];
/** The views every sheet has; the front of a frame looks along −y, the isometric eye is before, above and to its right (ISO 5456-3). */
export const views = {
  isometric: viewFrom("isometric", [1, -1, 1], ZED),
  front: viewFrom("front", [0, -1, 0], ZED),
  side: viewFrom("side", [1, 0, 0], ZED),
  back: viewFrom("back", [0, 1, 0], ZED),
  left: viewFrom("left", [-1, 0, 0], ZED),
  top: viewFrom("top", [0, 0, 1], [0, 1, 0]),
} as const;

/** Where a point of the frame lies on the picture plane: right and up, m. */
export function projected({ right, up }: View, point: Vec3): Vec2 {
  return [dot(point, right), dot(point, up)];
}
