import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "slot.mismatched",
  key: "misplaced",
  slip: "a bracket drawn over two faces that make no corner",
  spots: { "braced-trestle": "post-1 front", "timber-table": "leg-1 front" },
  sizes: "plain",
  consequences: OVERLOAD,
  plant(file, spot) {
    const [post, rail] = spot.split(" ") as [string, string];
    file.fastenings = [
      { id: "cleat", part: "gusset-bracket-40", on: "-y", against: "-y", at: [100, 0, 800], holds: [post, rail] },
    ];
    return ["cleat/1"];
  },
};
