import { dot, type Vec3 } from "../geometry/vector.ts";

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
