import { dot, type Vec3 } from "../geometry/vector.ts";
import { inTube, type Tube } from "./tubes.ts";

/** Within this cosine (2°) a direction is called by the axis it follows. */
const ALONG = Math.cos((2 * Math.PI) / 180);

/** A direction in words: "x", "the upright", or its components. */
export function directionWords(direction: Vec3): string {
  if (Math.abs(direction[2]) > ALONG) return "the upright";
  if (Math.abs(direction[0]) > ALONG) return "x";
  if (Math.abs(direction[1]) > ALONG) return "y";
  return `[${direction.map((c) => c.toFixed(2).replace("-0.00", "0.00")).join(", ")}]`;
}

/** Whether two directions lie along each other, either way. */
export function sameLine(a: Vec3, b: Vec3): boolean {
  return Math.abs(dot(a, b)) > ALONG;
}

/** Whether a line runs inside a bar along its length: a turn about it is the bar rolling. */
export function runsAlong(tube: Tube, direction: Vec3, point: Vec3): boolean {
  const [, y, z] = inTube(tube, point);
  return sameLine(direction, tube.axes.x) && Math.abs(y) < 2 * tube.half.y && Math.abs(z) < 2 * tube.half.z;
}
