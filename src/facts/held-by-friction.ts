import type { Clamp } from "./clamping.ts";
import type { ClampGroup } from "./joint-forces.ts";
import type { View } from "./view.ts";

/** A screw that holds by friction. */
export type Held = Pick<Clamp, "unitSlip" | "testedSlip" | "preload">;

/** What one such screw bears, N: across, and along off the face; and the group it shares the first with. */
export interface HeldForce {
  readonly clamp: Held;
  readonly shear: number;
  readonly pull: number;
  readonly group?: ClampGroup | undefined;
}

/** What a joint's screws bear that hold it by friction. */
export interface Sliding {
  readonly clamps: readonly HeldForce[];
}

/** A joint that screws hold by friction. */
export interface HeldByFriction {
  /** All that it bears, N; or only the weight that it passes. */
  borne(view: View, what?: "weight"): Sliding;
}
