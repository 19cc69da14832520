import { factOf } from "../facts/fact.ts";
import { sways } from "../facts/sway.ts";
import type { Frame } from "../model/frame.ts";
import type { Ailment } from "./cure.ts";

/** Which way a frame gives. */
export interface Giving {
  /** The axes of the plan, the one along which the frame gives most first; as they come where that is not known. */
  readonly axes: readonly [0 | 1, 0 | 1];
  /** Whether along the second it gives more than it may as well, if its joints prove soft. */
  readonly bothWays: boolean;
}

/** Along which axis a pushed frame gives most, and whether along the other it gives too far as well. */
export function givingOf(frame: Frame, { rule, utilisation }: Ailment): Giving {
  const typical = [0, 0];
  const most = [0, 0];
  for (const { axis, amount, view } of factOf(sways, frame)) {
    most[axis] = Math.max(most[axis] ?? 0, amount);
    if (view.bound === "typical") typical[axis] = Math.max(typical[axis] ?? 0, amount);
  }
  const axes = (typical[1] ?? 0) > (typical[0] ?? 0) ? ([1, 0] as const) : ([0, 1] as const);
  const allowed = rule === "frame.sways" && utilisation ? (typical[axes[0]] ?? 0) / utilisation : Infinity;
  return { axes, bothWays: (most[axes[1]] ?? 0) > allowed };
}
