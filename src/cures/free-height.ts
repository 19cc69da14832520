import { TOUCH } from "../facts/contacts.ts";
import { factOf } from "../facts/fact.ts";
import { solidBounds } from "../facts/solid-bounds.ts";
import type { Frame } from "../model/frame.ts";
import type { OuterPair } from "./posts.ts";
import { halfAcross, wayOut } from "./slanting-bar.ts";

/** From one height to another, m. */
type Stretch = readonly [low: number, high: number];

/** Left free over and under what lies there, m: a key with a short arm of 38 mm (ISO 2936, 6 mm) stands on the screws of its brackets. */
const KEY_ROOM = 0.05;

/**
 * The tallest stretch of height within `all` in which no bar and no connector lies where a bar of this thickness on the outer
 * faces of two posts would, and keys get to the connectors beside it.
 */
export function freeHeight(outer: OuterPair, frame: Frame, thick: number, all: Stretch): Stretch {
  const {
    pair: { a, b, axis },
    on,
  } = outer;
  const out = wayOut(on);
  const across = axis === 0 ? 1 : 0;
  const sign = out[across];
  const face = sign * a.from[across] + halfAcross(a, out);
  const [first, last] = [a.from[axis], b.from[axis]].sort((p, q) => p - q) as [number, number];
  const taken: Stretch[] = [];
  for (const {
    bar,
    bounds: { min, max },
  } of factOf(solidBounds, frame)) {
    if (bar === a.ref.id || bar === b.ref.id) continue;
    const [near, far] = sign > 0 ? [min[across], max[across]] : [-max[across], -min[across]];
    const within = max[axis] > first - thick && min[axis] < last + thick;
    if (within && far > face + TOUCH && near < face + thick) taken.push([min[2] - KEY_ROOM, max[2] + KEY_ROOM]);
  }
  let low = all[0];
  let best: Stretch = [low, low];
  for (const [from, to] of [...taken.sort((p, q) => p[0] - q[0]), [all[1], all[1]] as const]) {
    const high = Math.min(from, all[1]);
    if (high - low > best[1] - best[0]) best = [low, high];
    low = Math.max(low, to);
  }
  return best;
}
