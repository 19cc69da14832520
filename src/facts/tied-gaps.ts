import type { Pivot, Tie } from "../model/frame.ts";
import { bodies, onFace } from "./bodies.ts";
import { contacts } from "./contacts.ts";
import { defineFact } from "./fact.ts";
import { crossedFaces } from "./place-crossing.ts";
import { tiedFaces } from "./place-tie.ts";
import { gapFrom } from "./slot-to-slot.ts";

/** How far apart the faces of two tied bars stand. */
export interface TiedGap {
  readonly tie: Tie | Pivot;
  /** Where they stand furthest apart under a screw, m; undefined where no two faces look at each other from near by. */
  readonly gap: number | undefined;
}

/** The gap that each tie has to close, side by side or where bars cross: its screw clamps nothing while they do not touch. */
export const tiedGaps = defineFact<readonly TiedGap[], { bodies: typeof bodies; contacts: typeof contacts }>({
  id: "tied-gaps",
  needs: { bodies, contacts },
  compute({ bodies: all, contacts: touching }, frame) {
    const side = frame.ties.flatMap((tie): TiedGap[] => {
      const [a, b] = [all.get(tie.bars[0]), all.get(tie.bars[1])];
      if (!a || !b) return [];
      const faces = tiedFaces(a, b, touching.of(tie.bars[0]));
      if (!faces) return [{ tie, gap: undefined }];
      const gaps = tie.at.map((at) => gapFrom(faces, onFace(a, faces.faceA, at, 0)));
      return [{ tie, gap: Math.max(...gaps) }];
    });
    const crossing = frame.pivots.flatMap((tie): TiedGap[] => {
      const [a, b] = [all.get(tie.bars[0]), all.get(tie.bars[1])];
      if (!a || !b || tie.part.kind !== "side-tie") return [];
      const faces = crossedFaces(tie, a, b, touching.of(tie.bars[0]));
      return [{ tie, gap: faces && gapFrom(faces, onFace(a, faces.faceA, 0, 0)) }];
    });
    return [...side, ...crossing];
  },
});
