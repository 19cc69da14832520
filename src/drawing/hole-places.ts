import { boredHoles } from "../facts/bored-holes.ts";
import { factOf } from "../facts/fact.ts";
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

/** The middle of the hole in a bar that is so far from its cut end, m. */
export function holeNearEnd(frame: Frame, bar: string, toEnd: number): Vec3 | undefined {
  const near = factOf(boredHoles, frame).edges.find((one) => one.bar === bar && one.toEnd === toEnd);
  return near && midpoint(near.hole.line.from, near.hole.line.to);
}
