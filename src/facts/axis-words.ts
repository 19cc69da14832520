import { dot, type Vec3 } from "../geometry/vector.ts";
import { inTube, type Tube } from "./tubes.ts";

/** Within this cosine (2°) a direction is called by the axis it follows. */
const ALONG = Math.cos((2 * Math.PI) / 180);

/** A direction in words: "x", "z", or its components. */
export function directionWords(direction: Vec3): string {
  if (Math.abs(direction[2]) > ALONG) return "z";
  if (Math.abs(direction[0]) > ALONG) return "x";
  if (Math.abs(direction[1]) > ALONG) return "y";
  return `[${direction.map((c) => c.toFixed(2).replace("-0.00", "0.00")).join(", ")}]`;
}

/** Within this cosine (15°) a way is nearly that of an axis. */
const NEARLY = Math.cos((15 * Math.PI) / 180);
/** A way square to an axis within this sine (5°) lies in the plane of the other two. */
const IN_PLANE = Math.sin((5 * Math.PI) / 180);

/** Which way something goes, there or back: "along x", "nearly along x", "30° from x towards -z", or by its components. */
export function lineWords(direction: Vec3): string {
  const words = directionWords(direction);
  if (words.length === 1) return `along ${words}`;
  const [main, side, rest] = ([0, 1, 2] as const).toSorted((a, b) => Math.abs(direction[b]) - Math.abs(direction[a]));
  if (main === undefined || side === undefined || rest === undefined) return `along ${words}`;
  const axes = ["x", "y", "z"] as const;
  if (Math.abs(direction[main]) > NEARLY) return `nearly along ${axes[main]}`;
  if (Math.abs(direction[rest]) > IN_PLANE) return `along ${words}`;
  const angle = Math.round((Math.atan2(Math.abs(direction[side]), Math.abs(direction[main])) * 180) / Math.PI);
  const sign = direction[main] * direction[side] > 0 ? "+" : "-";
  return `${angle}° from ${axes[main]} towards ${sign}${axes[side]}`;
}

/** A face or slot by its letter and, where it looks along an axis, by that too: "D (facing -x)". */
export function facingWords(name: string, normal: Vec3): string {
  const axis = ["x", "y", "z"].find((_, i) => Math.abs(normal[i] ?? 0) > ALONG);
  if (axis === undefined) return name;
  return `${name} (facing ${normal[0] + normal[1] + normal[2] > 0 ? "+" : "-"}${axis})`;
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
