import type { Fault } from "../fault.ts";
import { hangBefore } from "../hung-bars.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "swing",
  slip: "bars hung before a wall so that a key goes in between them and does not turn",
  spots: { "seed-cabinet": "wall-left/low-left/2" },
  /*
   * Key 5 mm, arm 85 mm to its end: turned over after each 30° it comes to 85·sin 15° = 22 mm beside the screw, and 2.5 mm more. A bar 40 mm over the
   * head keeps the longer tools away.
   */
  sizes: { just: 20, far: 12 }, // mm from the screw to either wall
  plant(file, spot, apart) {
    hangBefore(file, { profile: "40x80-8", x: -50 }, [
      { id: "front-hanger", at: [-70, 250], on: ["+y", "-y"] },
      { id: "wall-1", at: [-30, 250 - apart - 20], on: ["-y"] },
      { id: "wall-2", at: [-30, 250 + apart + 20], on: ["+y"] },
    ]);
    return [spot];
  },
};
