import { withSolidShear } from "../solid-section.ts";
import { benches } from "./benches.ts";
import { braced } from "./braced.ts";
import type { CheckedFrame } from "./checked-frame.ts";
import { oneWay } from "./one-way.ts";
import { portals } from "./portals.ts";
import { pressed } from "./pressed.ts";

/** Every frame of the cross-check, with the shear stiffness of the solid bars it is compared with. */
export const checkedFrames: readonly CheckedFrame[] = [...portals, ...benches, ...braced, ...oneWay, ...pressed].map(
  (checked) => ({
    ...checked,
    model: withSolidShear(checked.model),
  }),
);
