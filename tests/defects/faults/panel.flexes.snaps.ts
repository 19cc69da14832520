import { addLoad } from "../draughting.ts";
import { type Fault, OVERLOAD } from "../fault.ts";
import { widen } from "../wide-boards.ts";

export const fault: Fault = {
  rule: "panel.flexes",
  key: "snaps",
  slip: "a board that stands out past its bars, and sacks piled to its edge",
  spots: { "step-platform": "platform", workstation: "top" },
  sizes: { sound: 50, faulty: 400 }, // mm past the bars on each side that is not drawn back
  consequences: {
    ...OVERLOAD,
    "build.too-heavy": "a larger board weighs more",
    "panel.flexes": "what is stressed where it leaves its bars gives there, and between them",
  },
  plant(file, spot, size) {
    widen(file, spot, size);
    addLoad(file, { case: "sacks", on: spot, pressure: 20 });
    return [spot];
  },
};
