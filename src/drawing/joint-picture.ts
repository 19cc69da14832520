import { boundsOf } from "../geometry/bounds.ts";
import { distance, midpoint } from "../geometry/vector.ts";
import { lineDrawing } from "./line-drawing.ts";
import type { Scene } from "./scene.ts";
import { views } from "./view.ts";

/** Room round the connectors of a joint, as a share of their size. */
const ROOM = 1.1;

/** A joint from near by: its connectors with their screws between the bars they hold. Undefined for one without a shape. */
export function jointPicture(scene: Scene, joint: string): string | undefined {
  const own = scene.solids.filter((solid) => solid.kind !== "bar" && solid.with.includes(joint));
  const points = own.flatMap(({ prism }) => prism.vertices);
  if (points.length === 0) return undefined;
  const { min, max } = boundsOf(points);
  const held = new Set(own.flatMap((solid) => solid.with));
  return lineDrawing(
    {
      ...scene,
      solids: scene.solids.filter(({ kind, of, with: known }) =>
        kind === "bar" ? held.has(of.id) : known.includes(joint),
      ),
    },
    {
      view: views.isometric,
      size: [300, 240],
      title: `joint ${joint} from near by`,
      focus: { at: midpoint(min, max), radius: ROOM * 0.5 * distance(min, max) },
      marks: own.flatMap(({ kind, of, prism }) => {
        const bounds = boundsOf(prism.vertices);
        return kind === "screw"
          ? [
              {
                at: midpoint(bounds.min, bounds.max),
                word: of.id.slice(of.id.lastIndexOf("/") + 1),
                weight: "light" as const,
              },
            ]
          : [];
      }),
    },
  );
}
