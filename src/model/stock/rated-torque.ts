import { type Si, si } from "../units/quantity.ts";
import type { Profile, Screw } from "./stock.ts";

/** Torque coefficient of a zinc-plated screw as delivered (Shigley, Table 8-15). */
const TYPICAL_TORQUE_COEFFICIENT = 0.2;
/**
 * Preload a typical screw reaches at its rated torque, in lip ratings. The rating is a resistance with a partial factor, without
 * spread of load, at guaranteed strength; lips give at `LIPS_GIVE` times it. At this value an M8 in a standard slot 8 is
 * tightened to 19 N·m (common practice: 15 to 25), an M6 in slot 6 to 8 N·m, an M5 in slot 5 to 3.3 N·m.
 */
const RATED_PRELOAD = 1.5;

/**
 * Torque a screw into a nut in this profile is tightened to, N·m: the profile's own value for the thread where stock states one,
 * else the least of what the screw may take and what brings a typical screw close below where the lips give.
 */
export function ratedTorque(screw: Screw, profile: Profile): Si<"moment"> {
  const stated = profile.torques.get(screw.thread);
  if (stated !== undefined) return stated;
  const lips = TYPICAL_TORQUE_COEFFICIENT * RATED_PRELOAD * profile.lipRating * screw.diameter;
  return si(Math.min(screw.torque, lips), "moment");
}
