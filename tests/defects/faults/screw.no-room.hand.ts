import type { Fault } from "../fault.ts";
import { hangBefore } from "../hung-bars.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "hand",
  slip: "bars hung before a wall so that a key turns between them, and no fingers",
  spots: { "seed-cabinet": "wall-left/low-left/2" },
  /*
   * Key 5 mm, arm 82.5 mm to its middle: fingers w wide swing 60° between walls at d while w/2·sin 60° + 82.5·cos 60° = d, so 60 mm ask
   * for 67.2 mm. A bar 40 mm over the head keeps the longer tools away.
   */
  sizes: { just: 66, far: 58 }, // mm from the screw to either wall
  plant(file, spot, apart) {
    hangBefore(file, { profile: "40x80-8", x: -50 }, [
      { id: "front-hanger", at: [-70, 250], on: ["+y", "-y"] },
      { id: "wall-1", at: [-30, 250 - apart - 20], on: ["-y"] },
      { id: "wall-2", at: [-30, 250 + apart + 20], on: ["+y"] },
    ]);
    return [spot];
  },
};
