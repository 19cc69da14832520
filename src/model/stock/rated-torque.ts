import { type Si, si } from "../units/quantity.ts";
import type { Profile, Screw } from "./stock.ts";

/** Torque coefficient of a well oiled screw: the least to be expected, so the preload is the most to be expected (T = K F d). */
const LEAST_TORQUE_COEFFICIENT = 0.15;

/**
 * Torque a screw into a nut in this profile is tightened to, N·m: the profile's own value for the thread where stock states one,
 * else the least of what the screw may take and what brings the lips to their rating when the screw runs most easily.
 */
export function ratedTorque(screw: Screw, profile: Profile): Si<"moment"> {
  const stated = profile.torques.get(screw.thread);
  if (stated !== undefined) return stated;
  return si(Math.min(screw.torque, LEAST_TORQUE_COEFFICIENT * profile.lipRating * screw.diameter), "moment");
}
