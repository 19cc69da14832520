import { mm } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "build.too-heavy",
  key: "heavy",
  slip: "a board typed far larger than the bars under it",
  spots: { "inch-bench": "top", "seed-cabinet": "lid", "step-platform": "platform", workstation: "top" },
  sizes: { sound: 0, faulty: 1000 }, // mm past the bars on each side that is not drawn back
  consequences: {
    ...OVERLOAD,
    "build.too-heavy/strained": "and further above what one person should lift",
    "panel.flexes/droops": "a board that stands far out past its bars gives at its edge",
    "panel.flexes/snaps": "and is stressed where it leaves them",
    "panel.unsupported/falls": "drawn far out in front and not behind, it falls off",
  },
  plant(file, spot, size) {
    const past = mm(file, size);
    for (const panel of file.panels ?? []) {
      // A side drawn back from bars that rise behind it stays so.
      const [a, b, c, d] = panel.overhang ?? [0, 0, 0, 0];
      const wide = (drawn: typeof a): typeof a => (typeof drawn === "number" && drawn < 0 ? drawn : past);
      if (panel.id === spot) panel.overhang = [wide(a), wide(b), wide(c), wide(d)];
    }
    return [spot];
  },
};
