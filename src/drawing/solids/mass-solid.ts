import { prismFromBox } from "../../geometry/prism.ts";
import type { Mass } from "../../model/frame.ts";
import { type Solid, skins } from "./solid.ts";

/** Equipment as the box the file gives it; undefined where it gives none. */
export function massSolid({ ref, centre, box, on }: Mass): Solid | undefined {
  if (!box) return undefined;
  const prism = prismFromBox({
    centre,
    axes: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    half: [box[0] / 2, box[1] / 2, box[2] / 2],
  });
  return { kind: "mass", of: ref, with: on, prism, surfaces: skins(prism) };
}
