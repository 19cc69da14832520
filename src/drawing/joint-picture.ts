import { boundsOf } from "../geometry/bounds.ts";
import { distance, dot, midpoint, normalise, type Vec3 } from "../geometry/vector.ts";
import { lineDrawing } from "./line-drawing.ts";
import type { Scene } from "./scene.ts";
import type { Solid } from "./solids/solid.ts";
import { viewFrom } from "./view.ts";

/** Room round the connectors of a joint, as a share of their size. */
const ROOM = 1.1;
/** A fastener that hides in its bars is shown with at least so much of them round it, m. */
const LEAST = 0.07;

const CORNERS: readonly Vec3[] = [1, -1].flatMap((z) =>
  [
    [1, -1],
    [-1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x = 1, y = 1]): Vec3 => normalise([x, y, z])),
);

/** Which way a screw's head looks; undefined for what has no head. */
function headWay({ kind, surfaces }: Solid): Vec3 | undefined {
  return kind === "screw" ? surfaces.find((surface) => surface.kind === "recess")?.normal : undefined;
}

/** The corner of the eight from which the most of the screws' heads are seen. */
export function bestCorner(own: readonly Solid[]): Vec3 {
  const heads = own.map(headWay).filter((way) => way !== undefined);
  const seen = (corner: Vec3): number => heads.reduce((sum, way) => sum + Math.max(0, dot(way, corner)), 0);
  return CORNERS.reduce((a, b) => (seen(b) > seen(a) + 1e-9 ? b : a));
}

/** A joint from near by: its connectors with their screws between the bars they hold, what is named brought out. Undefined for one without a shape. */
export function jointPicture(scene: Scene, joint: string, named: ReadonlySet<string> = new Set()): string | undefined {
  const own = scene.solids.filter((solid) => solid.kind !== "bar" && solid.with.includes(joint));
  const points = own.flatMap(({ prism }) => prism.vertices);
  if (points.length === 0) return undefined;
  const { min, max } = boundsOf(points);
  const eye = bestCorner(own);
  const held = new Set(own.flatMap((solid) => solid.with));
  return lineDrawing(
    {
      ...scene,
      solids: scene.solids.filter(({ kind, of, with: known }) =>
        kind === "bar" ? held.has(of.id) : known.includes(joint),
      ),
    },
    {
      view: viewFrom("near", eye, [0, 0, 1]),
      size: [300, 240],
      title: `joint ${joint} from near by`,
      look: ({ of }) => (named.has(of.id) ? "marked" : "plain"),
      focus: { at: midpoint(min, max), radius: Math.max(ROOM * 0.5 * distance(min, max), LEAST) },
      marks: own.flatMap((solid) => {
        const [way, { min: low, max: high }] = [headWay(solid), boundsOf(solid.prism.vertices)];
        if (!way || dot(way, eye) < 0.1) return [];
        const weight = named.has(solid.of.id) ? ("strong" as const) : ("light" as const);
        return [{ at: midpoint(low, high), word: solid.of.id.split("/").slice(1).join("/"), weight }];
      }),
    },
  );
}
