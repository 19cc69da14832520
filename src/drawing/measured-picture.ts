import { distance, midpoint, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Dimension } from "./dimensions.ts";
import { type Band, type Ghost, type Look, lineDrawing } from "./line-drawing.ts";
import { roundAbout } from "./round-about.ts";
import type { Scene } from "./scene.ts";
import type { Solid } from "./solids/solid.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [300, 220];
/** Room round what is measured, as a share of its length, and the least of it, m. */
const ROOM = 0.9;
const LEAST = 0.045;

/** A length in a frame that a finding is about, seen square on. */
export interface Measured {
  /** Its ends, m, and the eye and what is above on the picture. */
  readonly from: Vec3;
  readonly to: Vec3;
  readonly eye: Vec3;
  readonly over: Vec3;
  readonly dimensions: readonly Dimension[];
  /** How a part is drawn; it is left out where undefined. */
  look(solid: Solid): Look | undefined;
  /** Whether cut ends are seen that lie far from it: of bars seen along themselves. */
  readonly ends?: boolean;
  readonly bands?: readonly Band[];
  readonly ghosts?: readonly Ghost[];
}

/** From near by, with the lengths written in. */
export function measuredPicture(scene: Scene, measured: Measured, title: string): string {
  const { from, to, eye, over, dimensions, bands = [], ghosts = [] } = measured;
  const at = midpoint(from, to);
  const radius = Math.max(ROOM * distance(from, to), LEAST);
  const looks = new Map<Solid, Look>();
  for (const solid of scene.solids) {
    const look = measured.look(solid);
    const round = look && (measured.ends ? solid : roundAbout(solid, at, radius));
    if (round) looks.set(round, look);
  }
  return lineDrawing(
    { solids: [...looks.keys()], clashing: new Set() },
    {
      view: viewFrom("square on", eye, over),
      size: SIZE,
      title,
      look: (solid) => looks.get(solid) ?? "plain",
      focus: { at, radius },
      dimensions,
      bands,
      ghosts,
    },
  );
}
