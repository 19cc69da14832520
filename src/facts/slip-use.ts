import { holdLeft } from "../mechanics/fasteners/preload.ts";
import { type Si, si } from "../model/units/quantity.ts";
import type { Clamp } from "./clamping.ts";
import { type Governed, governing, governingView } from "./governing.ts";
import { checkGroups } from "./group-check.ts";
import type { ClampForce } from "./joint-forces.ts";
import type { View } from "./response.ts";

/**
 * What friction is reckoned with: its middle value, the factor on the slip load that 95 of 100 screws exceed, and what that is
 * divided by besides in strength combinations.
 */
export interface Friction {
  readonly value: number;
  readonly factor: number;
  readonly divided: number;
}

/**
 * A clamp from which a pull takes more counts as keeping a hundredth, and one that holds less as holding a newton, so that what bears on
 * them stays a share that can be read: far beyond any limit all the same.
 */
const LEAST_LEFT = 0.01;
const LEAST_TRUSTED = 1;

/** A screw that holds by friction. */
export type Held = Pick<Clamp, "unitSlip" | "testedSlip" | "preload">;

/** What a joint's screws bear that hold it by friction. */
interface Sliding {
  readonly clamps: readonly (Pick<ClampForce, "shear" | "pull" | "group"> & { readonly clamp: Held })[];
}

/** A joint that screws hold by friction. */
export interface HeldByFriction {
  /** All that it bears, N; or only the weight that it passes. */
  borne(view: View, what?: "weight"): Sliding;
}

/** Slip load a clamp is trusted with in a combination, N. */
function trustedSlip(clamp: Held, friction: Friction, { combination }: View): number {
  const divided = combination.kind === "strength" ? friction.divided : 1;
  return (clamp.testedSlip ?? clamp.unitSlip * friction.value) / (friction.factor * divided);
}

/** The clamp of a joint that comes nearest to slipping. */
export interface Slip {
  /** Shear over what the clamp, less what pulls on it, is trusted with. */
  readonly use: number;
  /** N */
  readonly shear: number;
  /** N, before anything pulls on it. */
  readonly trusted: number;
  /** Share of it that the pull leaves. */
  readonly left: number;
}

/** Slip utilisation of the worst clamp: shear over what the clamp, less what pulls on it, is trusted with. */
export function worstSlip({ clamps }: Sliding, friction: Friction, view: View): Slip {
  let worst: Slip = { use: 0, shear: 0, trusted: 0, left: 1 };
  for (const { clamp, shear, pull } of clamps) {
    if (shear === 0) continue;
    const trusted = Math.max(trustedSlip(clamp, friction, view), LEAST_TRUSTED);
    const left = Math.max(holdLeft(pull, clamp.preload), LEAST_LEFT);
    const use = shear / (trusted * left);
    if (use > worst.use) worst = { use, shear, trusted, left };
  }
  return worst;
}

/** Slip utilisation of a joint under all that acts on it. */
export function slipUse(
  views: readonly View[],
  joint: HeldByFriction,
  friction: Friction,
): Governed<"ratio"> | undefined {
  return governing(
    views,
    ["strength", "service", "sway"],
    "ratio",
    (view) => worstSlip(joint.borne(view), friction, view).use,
  );
}

/** Slip utilisation of a joint under the weight that it passes alone. */
export function weightUse(
  views: readonly View[],
  joint: HeldByFriction,
  friction: Friction,
): Governed<"ratio"> | undefined {
  return governing(views, ["strength"], "ratio", (view) => worstSlip(joint.borne(view, "weight"), friction, view).use);
}

/** The figures behind a utilisation, as quantities. */
export function slipFigures(
  views: readonly View[],
  joint: HeldByFriction,
  friction: Friction,
  governed: Governed<"ratio">,
  what?: "weight",
): { readonly shear: Si<"force">; readonly trusted: Si<"force">; readonly left: Si<"ratio"> } {
  const view = governingView(views, governed);
  const borne = view && joint.borne(view, what);
  // What governs is checked against the motion of the group as a whole; the shares of all views are made alike.
  if (borne)
    checkGroups(borne, ({ clamp, pull }) => trustedSlip(clamp, friction, view) * holdLeft(pull, clamp.preload));
  const { shear, trusted, left } = borne ? worstSlip(borne, friction, view) : { shear: 0, trusted: 0, left: 1 };
  return { shear: si(shear, "force"), trusted: si(trusted, "force"), left: si(left, "ratio") };
}
