import { SolveCheckFailed } from "../mechanics/errors.ts";
import { slipOfGroup } from "../mechanics/fasteners/slip-group.ts";
import type { ClampForce, ClampGroup } from "./joint-forces.ts";

/** Rounding of the shares of a few screws. */
const ALLOWED = 1e-6;

/** The upper bound is a true one from the first step; after these it is within some thousandths. */
const STEPS = 20;

/**
 * Checks the shares of screws that hold together against the motion of the group about its instantaneous centre: shares in balance with
 * the load, each within what its screw holds, are held for certain (Drucker, Prager and Greenberg 1952), so the load factor they
 * allow is never above that at which the group gives way. `holds` is what a clamp is trusted with, N.
 * @throws SolveCheckFailed where it is: the shares do not balance the load.
 */
export function checkGroups<Force extends Pick<ClampForce, "shear" | "group">>(
  { clamps }: { readonly clamps: readonly Force[] },
  holds: (force: Force) => number,
): void {
  const groups = new Map<ClampGroup, Force[]>();
  for (const force of clamps) {
    if (!force.group) continue;
    const own = groups.get(force.group);
    if (own) own.push(force);
    else groups.set(force.group, [force]);
  }
  for (const [{ at, load }, forces] of groups) {
    const fasteners = forces.map((force, i) => ({ at: at[i] ?? ([0, 0] as const), slip: holds(force) }));
    const elastic = forces.reduce(
      (least, { shear }, i) => (shear > 0 ? Math.min(least, (fasteners[i]?.slip ?? 0) / shear) : least),
      Infinity,
    );
    if (!(elastic > 0 && elastic < Infinity)) continue;
    const defect = elastic / slipOfGroup(fasteners, load, STEPS).upper - 1;
    if (!(defect <= ALLOWED)) throw new SolveCheckFailed("instantaneous centre", defect, ALLOWED);
  }
}
