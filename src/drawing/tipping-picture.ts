import type { Tipping, TippingLine } from "../facts/tipping.ts";
import { add, along, cross, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { type Band, lineDrawing } from "./line-drawing.ts";
import { plainScene, type Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [420, 340];
const INK = "#84230f";
const UP: Vec3 = [0, 0, 1];
/** Half the size of the cross at the centre of mass, as a share of its height. */
const CROSS = 0.05;
/** Length of arrows and of their barbs, as shares of the height of the push. */
const ARROW = 0.35;
const BARB = 0.06;

function line(points: readonly Vec3[], name: string, dashes?: string): Band {
  return { points, ink: INK, wide: { units: 1.4 }, name, ...(dashes === undefined ? {} : { dashes }) };
}

/** The frame seen along the line it tips over, with lines drawn over it. */
function alongLine(scene: Scene, { inward }: TippingLine, bands: readonly Band[], title: string): string {
  return lineDrawing(plainScene(scene), {
    view: viewFrom("along the line it tips over", cross(inward, UP), UP),
    size: SIZE,
    title,
    look: (solid) => (solid.kind === "screw" || solid.kind === "cap" ? "hidden" : "plain"),
    bands,
  });
}

/** The frame as it is tilted: its centre of mass, and how far that lies inside the line it tips over and up. */
export function tiltPicture(scene: Scene, state: Tipping, title: string): string {
  const { pivot, inward, inside, height } = state;
  const below = along(pivot, inward, inside);
  const centre = along(below, UP, height);
  const arm = (way: Vec3): readonly [Vec3, Vec3] => [
    add(centre, scale(way, -CROSS * height)),
    add(centre, scale(way, CROSS * height)),
  ];
  const bands = [
    line([pivot, below], "inside the line"),
    line([below, centre], "height of the centre of mass"),
    line([pivot, centre], "from the line to the centre of mass", "5 3"),
    line(arm(inward), "centre of mass"),
    line(arm(UP), "centre of mass"),
  ];
  return alongLine(scene, state, bands, title);
}

/** A push at a height over the floor against the weight, which acts so far inside the line, m. */
export interface PushDrawn {
  readonly over: TippingLine;
  readonly inside: number;
  readonly height: number;
}

/** The frame as it is pushed: the push over its height, and the weight at its distance inside the line it tips over. */
export function pushPicture(scene: Scene, { over, inside, height }: PushDrawn, title: string): string {
  const { pivot, inward } = over;
  const below = along(pivot, inward, inside);
  const pushed = along(pivot, UP, height);
  const [long, barb] = [ARROW * height, BARB * height];
  /** An arrow that ends at `tip`; `aside` is square to its way. */
  const arrow = (tip: Vec3, way: Vec3, aside: Vec3, name: string): readonly Band[] => [
    line([along(tip, way, -long), tip], name),
    line(
      [-1, 0, 1].map((side) => along(along(tip, way, side === 0 ? 0 : -barb), aside, side * 0.5 * barb)),
      name,
    ),
  ];
  const bands = [
    line([pivot, below], "from the line to the weight"),
    line([pivot, pushed], "height of the push", "5 3"),
    ...arrow(along(pushed, inward, 0.02 * height), scale(inward, -1), UP, "push"),
    ...arrow(below, scale(UP, -1), inward, "weight"),
  ];
  return alongLine(scene, over, bands, title);
}
