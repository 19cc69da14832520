import { AT_CROSS_BARS } from "../cross-bars.ts";
import { changeConnector, forSlot } from "../draughting.ts";
import type { Fault } from "../fault.ts";

/** Screws a step and two steps too short, by slot size: what is left past leg and lip, of the thread wanted. */
const SHORTER: Readonly<Record<string, readonly [string, string]>> = {
  "5": ["M5x6", "M5x6"], // 6 - 2.5 - 2 of 3.06
  "6": ["M6x10", "M6x8"], // 10 - 4 - 2.7 of 4.05
  "8": ["M8x14", "M8x12"], // 14 - 5 - 4 of 5.4
  "10": ["M8x16", "M8x12"], // 16 - 6 - 4.5 of 6.3
  "1/4": ["1/4-20x0.25", "1/4-20x0.25"], // 0.25 - 0.125 - 0.09 of 0.135 in
  "5/16": ["5/16-18x0.5", "5/16-18x0.4375"], // 0.5 - 0.2 - 0.17 of 0.198 in
};

export const fault: Fault = {
  rule: "screw.misfit",
  key: "short",
  slip: "a shorter screw in one bracket",
  spots: AT_CROSS_BARS,
  sizes: { just: 0, far: 1 },
  plant(file, spot, size) {
    changeConnector(file, spot, "to", { screw: forSlot(file, spot, SHORTER)[size === 0 ? 0 : 1] });
    return [`${spot}.to/1/a1`, `${spot}.to/1/b1`];
  },
};
