import { type Fault, OVERLOAD } from "../fault.ts";
import { LAID_BOARDS, widen } from "../wide-boards.ts";

export const fault: Fault = {
  rule: "build.too-heavy",
  key: "strained",
  slip: "a board typed larger than one person lifts this way",
  spots: LAID_BOARDS,
  sizes: { sound: 0, faulty: 1000 }, // mm past the bars on each side that is not drawn back
  consequences: {
    ...OVERLOAD,
    "build.too-heavy/heavy": "and heavier than hands should bear at all",
    "panel.flexes/droops": "a board that stands far out past its bars gives at its edge",
    "panel.flexes/snaps": "and is stressed where it leaves them",
    "panel.unsupported/falls": "drawn far out in front and not behind, it falls off",
  },
  plant(file, spot, size) {
    widen(file, spot, size);
    return [spot];
  },
};
