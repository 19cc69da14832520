import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "entry",
  slip: "a second rail drawn close under a plate whose screws are turned from there",
  spots: { "timber-table": "front" },
  sizes: "plain",
  consequences: { "screw.no-room/swing": "where a key goes in it does not turn", ...OVERLOAD },
  plant(file, spot) {
    // 45 mm are left between the rails, 5 of them the plate's and 8 the heads'.
    file.bars.push({ id: "under", profile: "40x40-8", from: [100, 20, 675], to: [1100, 20, 675] });
    file.joints?.push({ bars: ["under"], by: [{ connector: "gusset-bracket-40", on: "below" }] });
    file.fastenings = [{ id: "doubler", part: "plate-I-40", on: "-z", at: [600, 20, 740], holds: [spot, "under"] }];
    return ["doubler"];
  },
};
