import type { Tipping } from "../facts/tipping.ts";
import { add, along, cross, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import { type Band, lineDrawing } from "./line-drawing.ts";
import { plainScene, type Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [420, 340];
const INK = "#84230f";
const UP: Vec3 = [0, 0, 1];
/** Half the size of the cross at the centre of mass, as a share of its height. */
const CROSS = 0.05;

/** The frame seen along the line it tips over, with its centre of mass and how far that lies inside the line and up. */
export function tippingPicture(scene: Scene, { pivot, inward, inside, height }: Tipping, title: string): string {
  const below = along(pivot, inward, inside);
  const centre = along(below, UP, height);
  const line = (from: Vec3, to: Vec3, name: string, dashes?: string): Band => ({
    points: [from, to],
    ink: INK,
    wide: { units: 1.4 },
    name,
    ...(dashes === undefined ? {} : { dashes }),
  });
  const arm = (way: Vec3): readonly [Vec3, Vec3] => [
    add(centre, scale(way, -CROSS * height)),
    add(centre, scale(way, CROSS * height)),
  ];
  return lineDrawing(plainScene(scene), {
    view: viewFrom("along the line it tips over", cross(inward, UP), UP),
    size: SIZE,
    title,
    look: (solid) => (solid.kind === "screw" || solid.kind === "cap" ? "hidden" : "plain"),
    bands: [
      line(pivot, below, "inside the line"),
      line(below, centre, "height of the centre of mass"),
      line(pivot, centre, "from the line to the centre of mass", "5 3"),
      line(...arm(inward), "centre of mass"),
      line(...arm(UP), "centre of mass"),
    ],
  });
}
