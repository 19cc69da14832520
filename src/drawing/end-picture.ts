import type { EndState } from "../facts/ends.ts";
import { add, normalise, type Vec3 } from "../geometry/vector.ts";
import { lineDrawing } from "./line-drawing.ts";
import { roundAbout } from "./round-about.ts";
import type { Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

/** How far round the middle of the cut the picture reaches, in sizes of the end. */
const ROUND = 1.6;
/** The eye stands this much to the side of and above the axis of the bar, so that the end is seen as the end of something. */
const ASIDE: Vec3 = [0.35, -0.25, 0.45];

/** A cut end from near by, its bar brought out: where it is and what is next to it. */
export function endPicture(scene: Scene, { ref, bar, at, normal }: EndState, size: number): string {
  const upright = Math.abs(normal[2]) > 0.9;
  const radius = ROUND * size;
  const solids = scene.solids.flatMap((solid) => (solid.kind === "panel" ? [] : (roundAbout(solid, at, radius) ?? [])));
  return lineDrawing(
    { ...scene, solids },
    {
      view: viewFrom("near", normalise(add(normal, ASIDE)), upright ? [0, 1, 0] : [0, 0, 1]),
      size: [300, 240],
      title: `the end ${ref.id} from near by`,
      look: ({ kind, of }) => (kind === "bar" && of.id === bar.id ? "marked" : "plain"),
      focus: { at, radius },
    },
  );
}
