import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector, forSlot } from "../draughting.ts";
import type { Fault } from "../fault.ts";

/** Screws that are a step and several steps from the right one, by slot size. */
const LONGER: Readonly<Record<string, readonly [string, string]>> = {
  "5": ["M5x10", "M5x12"], // slot 6.5 deep under 2.5 of leg: 1 and 3 mm too long
  "6": ["M6x14", "M6x20"], // 9 under 4
  "8": ["M8x18", "M8x25"], // 12.5 under 5: 0.5 too long
  "10": ["M8x22", "M8x30"], // 14.5 under 6
  "1/4": ["1/4-20x0.5", "1/4-20x0.75"], // 0.31 in under 0.125
  "5/16": ["5/16-18x0.75", "5/16-18x1"], // 0.48 in under 0.2
};

export const fault: Fault = {
  rule: "screw.misfit",
  key: "bottoms",
  slip: "a longer screw in one bracket",
  spots: AT_CROSS_BARS,
  sizes: { just: 0, far: 1 },
  plant(file, spot, size) {
    changeConnector(file, spot, "to", { screw: forSlot(file, spot, LONGER)[size === 0 ? 0 : 1] });
    return [`${spot}.to/1/a1`, `${spot}.to/1/b1`];
  },
};
