import type { Bar, FrameFile } from "../../src/model/generated/frame-file.generated.ts";
import { barData } from "./gantry.ts";

/** Length of a rail between the legs it hangs on, m: 1 m between their axes. */
export const RAIL = 0.96;

/**
 * Two rails of 40x40-8, tops at z = 820, hung between four legs that run on to `top` (mm); cross bars below on two gusseted
 * brackets. Both rails are loaded alike and the feet slide, so each rail end passes half of its load.
 */
export function hungRails(force: number, top = 1000): FrameFile {
  const leg = (id: string, x: number, y: number): Bar => ({
    id,
    profile: "40x40-8",
    from: [x, y, 50],
    to: [x, y, top],
  });
  const rail = (id: string, y: number): Bar => ({ id, profile: "40x40-8", from: [0, y, 800], to: [1000, y, 800] });
  const cross = (id: string, x: number, z: number): Bar => ({
    id,
    profile: "40x40-8",
    from: [x, 0, z],
    to: [x, 500, z],
  });
  return {
    format: 1,
    title: "hung rails",
    units: "mm-N-kg",
    bars: [
      leg("leg-1", 0, 0),
      leg("leg-2", 1000, 0),
      leg("leg-3", 1000, 500),
      leg("leg-4", 0, 500),
      rail("front", 0),
      rail("back", 500),
      cross("cross-1", 0, 700),
      cross("cross-2", 1000, 700),
      cross("low-1", 0, 200),
      cross("low-2", 1000, 200),
      { id: "tie-front", profile: "40x40-8", from: [0, 0, 300], to: [1000, 0, 300] },
      { id: "tie-back", profile: "40x40-8", from: [0, 500, 300], to: [1000, 500, 300] },
    ],
    kits: {
      rail: [{ connector: "inside-bracket-40", on: "below", torque: "20 N·m" }],
      firm: [
        { connector: "gusset-bracket-40", on: "above" },
        { connector: "gusset-bracket-40", on: "below" },
      ],
    },
    joints: [
      { bars: ["front", "back"], by: "rail" },
      { bars: ["cross-1", "cross-2", "low-1", "low-2", "tie-front", "tie-back"], by: "firm" },
    ],
    stands: [{ part: "foot-40-M8", bars: ["leg-1", "leg-2", "leg-3", "leg-4"] }],
    loads: [{ case: "goods", on: ["front", "back"], force, at: "middle" }],
  };
}

/** Factors on weight and load: partial ones (EN 1990, 6.10), and none (ASCE 7-16, 2.4.1, from memory). */
export type Factors = readonly [weight: number, load: number];
export const PARTIAL: Factors = [1.35, 1.5];
export const OWN: Factors = [1, 1];

/** The force on a rail for which its end passes this much, N: (1.5 F + 1.35 w L) / 2 = shear with partial factors. */
export const forceFor = (shear: number, [G, Q] = PARTIAL): number =>
  (2 * shear - G * barData("40x40-8").weight * RAIL) / Q;
