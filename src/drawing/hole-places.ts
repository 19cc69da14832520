import { closestPoints } from "../geometry/segment.ts";
import { midpoint, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { holePair } from "./bores-picture.ts";

/** Where the two holes in a bar that leave so much metal between them, m, come nearest to each other. */
export function betweenHoles(frame: Frame, bar: string, metal: number): Vec3 | undefined {
  const pair = holePair(frame, bar, metal);
  if (!pair) return undefined;
  const { first, second } = closestPoints(pair.a.line, pair.b.line);
  return midpoint(first, second);
}
