import type { Fault } from "../fault.ts";
import { hangBefore } from "../hung-bars.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "ball",
  slip: "a bar hung before a wall so that only a ball end gets past its edge to a screw",
  spots: { "seed-cabinet": "wall-left/low-left/2" },
  /*
   * 28 mm over the head, where a straight key of 5 mm asks for 33. A stem of 2.9 mm tilted by 25° passes the edge of the bar up to
   * (28·sin 25° - 2.9)/cos 25° = 9.8 mm beyond the axis; straight on, a bar that ends within 2.9 mm of it stops it.
   */
  sizes: { just: -2, far: 9 }, // mm from the axis to the edge of the bar
  consequences: { "screw.no-room/entry": "a straight key does not go in" },
  plant(file, spot, beyond) {
    hangBefore(file, { profile: "40x40-8", x: -58.4 }, [
      { id: "front-hanger", at: [-58.4, 250 + beyond - 20], on: ["+y", "-y"] },
    ]);
    return [spot];
  },
};
