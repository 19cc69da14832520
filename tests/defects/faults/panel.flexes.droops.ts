import { mm } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";

export const fault: Fault = {
  rule: "panel.flexes",
  key: "droops",
  slip: "a board that stands far out past its bars on one side",
  spots: { "seed-cabinet": "lid", workstation: "top" },
  sizes: { sound: 0, faulty: 900 }, // mm past the bars on that side
  consequences: {
    ...OVERLOAD,
    "build.too-heavy": "a larger board weighs more",
    "panel.flexes/snaps": "what gives so far is also stressed where it leaves its bars",
  },
  plant(file, spot, size) {
    for (const panel of file.panels ?? []) {
      const [, b, c, d] = panel.overhang ?? [0, 0, 0, 0];
      if (panel.id === spot) panel.overhang = [mm(file, size), b, c, d];
    }
    return [spot];
  },
};
