import { bar } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "entry",
  slip: "a bar hung close before a wall whose screws are turned from there",
  spots: { "seed-cabinet": "wall-left/post-1" },
  sizes: "plain",
  plant(file, spot) {
    // 14 mm before the sheet, 4.4 of which are the heads'; the wall goes on when the bars stand.
    bar(file, "top-front").from = [-120, 20, 1200];
    file.bars.push({ id: "hanger", profile: "40x40-8", from: [-40, 20, 600], to: [-40, 20, 1200] });
    file.joints?.push({ bars: ["hanger/to"], by: [{ connector: "gusset-bracket-40", on: "-x" }] });
    return [spot];
  },
};
