import { holdLeft } from "../mechanics/fasteners/preload.ts";
import type { Clamp } from "./clamping.ts";
import { type Governed, governing } from "./governing.ts";
import type { Borne, JointForces } from "./joint-forces.ts";
import type { View } from "./response.ts";

/** What friction is reckoned with: its middle value, and the factor on the slip load that 95 of 100 screws exceed. */
export interface Friction {
  readonly value: number;
  readonly factor: number;
}

/** Slip load a clamp is trusted with, N. */
export function trustedSlip(clamp: Clamp, friction: Friction): number {
  return (clamp.testedSlip ?? clamp.unitSlip * friction.value) / friction.factor;
}

/** Slip utilisation of the worst clamp: shear over what the clamp, less what pulls on it, is trusted with. */
export function worstSlip({ clamps }: Borne, friction: Friction): number {
  let most = 0;
  for (const { clamp, shear, pull } of clamps) {
    if (shear === 0) continue;
    const trusted = trustedSlip(clamp, friction) * holdLeft(pull, clamp.preload);
    most = Math.max(most, trusted > 0 ? shear / trusted : Number.MAX_VALUE);
  }
  return most;
}

/** Slip utilisation of a joint under all that acts on it. */
export function slipUse(views: readonly View[], joint: JointForces, friction: Friction): Governed<"ratio"> | undefined {
  return governing(views, ["strength", "service", "sway"], "ratio", (view) => worstSlip(joint.borne(view), friction));
}

/** Slip utilisation of a joint under the weight that it passes alone. */
export function weightUse(
  views: readonly View[],
  joint: JointForces,
  friction: Friction,
): Governed<"ratio"> | undefined {
  return governing(views, ["strength"], "ratio", (view) => worstSlip(joint.borne(view, "weight"), friction));
}
