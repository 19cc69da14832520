import { AT_CROSS_BARS } from "../cross-bars.ts";
import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.adrift",
  key: "unheld",
  slip: "a bar with two closed faces, those turned to its brackets",
  // Bars along +y: turned by 90° the closed faces A and C look to ±x, where both brackets of each end sit.
  spots: Object.fromEntries(
    Object.entries(AT_CROSS_BARS).filter(([frame]) =>
      ["braced-trestle", "roller-stand", "timber-table"].includes(frame),
    ),
  ),
  sizes: "plain",
  consequences: {
    "slot.mismatched": "its screws lie on closed slots",
    "load.none/lost": "nothing carries the load on that bar",
  },
  plant(file, spot) {
    const one = bar(file, spot);
    one.profile = `${one.profile}-opposite-closed`;
    one.roll = 90;
    return [spot];
  },
};
