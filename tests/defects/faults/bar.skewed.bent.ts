import { AT_CROSS_BARS } from "../cross-bars.ts";
import { kitOf, moveEnd, point, refasten } from "../draughting.ts";
import type { Fault } from "../fault.ts";

export const fault: Fault = {
  rule: "bar.skewed",
  key: "bent",
  slip: "one end of a bar drawn well to the side, its brackets left as they were",
  // Bars along +y with brackets beside them.
  spots: Object.fromEntries(
    Object.entries(AT_CROSS_BARS).filter(([frame]) =>
      ["braced-trestle", "roller-stand", "timber-table"].includes(frame),
    ),
  ),
  sizes: { just: 5.02, far: 12 }, // degrees of 5°
  consequences: {
    "slot.mismatched": "its screws run off the slots",
    "bar.adrift": "no screw is left in a slot",
    "bar.clash": "it runs into what lies beside it",
    "load.none/lost": "no screw is left in a slot",
    "joint.gap": "it is longer than it was",
    "joint.slips": "its brackets stand askew",
    "screw.crowded": "the legs of a bracket come nearer each other",
  },
  plant(file, spot, size) {
    // No face of a bar so askew looks along an axis: its brackets are on faces by letter, B to +x and D to -x.
    for (const end of ["from", "to"] as const) {
      const items = kitOf(file, spot, end);
      refasten(
        file,
        spot,
        end,
        items.map((item) => ({ ...item, on: item.on === "+x" ? "B" : "D" })),
      );
    }
    const length = point(file, spot, "to")[1] - point(file, spot, "from")[1];
    moveEnd(file, spot, "to", 0, length * Math.tan((size * Math.PI) / 180));
    return [spot];
  },
};
