import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "screw.no-room",
  key: "entry",
  slip: "the upper bar of a tied beam left for last, when a rail lies close under the holes of its ties",
  spots: { "timber-table": "tie-front" },
  sizes: "plain",
  consequences: { "screw.crowded": "the brackets of the legs are on by then" },
  plant(file, spot) {
    // 60 mm are left under the holes: the short arm of a key would do, but its head lies 34 mm deep.
    file.bars.push({ id: "under", profile: "40x40-8", from: [100, 20, 660], to: [1100, 20, 660] });
    file.joints?.push({ bars: ["under"], by: [{ connector: "gusset-bracket-40", on: "below" }] });
    file.groups = [{ id: "trestle", parts: ["leg-1", "leg-2", "front", "under"] }];
    return [spot];
  },
};
