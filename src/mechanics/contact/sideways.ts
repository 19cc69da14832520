import type { Condensed, CondensedSolution, Slip } from "./condensed.ts";

/** A force or motion counts as wrong only beyond this fraction of the largest one: twice the digits rounding leaves. */
const WRONG = 1e-9;
/** A slip direction is settled when it turns by less than this, rad. */
const SLIP_TURN = 1e-7;

/** Unit vector; along the first side for no motion at all. */
const unit = (x: number, y: number): readonly [number, number] => {
  const size = Math.hypot(x, y);
  return size > 0 ? [x / size, y / size] : [1, 0];
};

/** Differences below these are rounding: N and m. */
export interface Tolerance {
  readonly force: number;
  readonly motion: number;
}

export function tolerance(model: Condensed, s: CondensedSolution): Tolerance {
  let [force, motion] = [0, 0];
  for (const p of s.force) force = Math.max(force, Math.abs(p));
  model.links.links.forEach(({ base }, i) => {
    motion = Math.max(motion, Math.abs(s.motion[i] as number), Math.abs(s.contact[i] as number) / base);
  });
  return { force: WRONG * force, motion: WRONG * motion };
}

/** A contact that held gives way against the force that held it, and at first in that direction only. */
export function givingWay(model: Condensed, k: number, s: CondensedSolution): Slip {
  const side = (model.links.normal[k] ?? 0) + 1;
  const direction = unit(-(s.contact[side] as number), -(s.contact[side + 1] as number));
  return { direction, drag: model.links.links[side]?.base ?? 0 };
}

/**
 * What a contact that holds sideways up to the force `most` should do instead, when its condition fails: hold, or slip.
 * `now` is how it slips, undefined when it holds.
 */
export function sidewaysChange(
  model: Condensed,
  k: number,
  now: Slip | undefined,
  most: number,
  s: CondensedSolution,
  tol: Tolerance,
): "hold" | Slip | undefined {
  const normal = model.links.normal[k] ?? 0;
  if (!now) {
    const held = Math.hypot(s.contact[normal + 1] as number, s.contact[normal + 2] as number);
    return held <= most + tol.force ? undefined : givingWay(model, k, s);
  }
  const moved = [s.motion[normal + 1] as number, s.motion[normal + 2] as number] as const;
  const distance = Math.hypot(...moved);
  if (distance <= tol.motion) return undefined;
  const direction = unit(...moved);
  const along = now.direction[0] * direction[0] + now.direction[1] * direction[1];
  const across = Math.abs(now.direction[0] * direction[1] - now.direction[1] * direction[0]);
  if (along <= 0) return "hold";
  if (across <= SLIP_TURN) return undefined;
  return { direction, drag: most / distance };
}
