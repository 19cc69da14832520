import type { Vec2, Vec3 } from "../geometry/vector.ts";
import { arcBands, openDoor, type Swinging } from "./door-swing.ts";
import { lineDrawing } from "./line-drawing.ts";
import { plainScene, type Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [420, 340];

/** A door seen along its hinges: as drawn, and in outline where it stands open or where it strikes, with its arc. */
export function doorPicture(scene: Scene, swing: Swinging, title: string): string {
  const { axis } = swing.pin;
  // From above where the hinges stand upright.
  const eye: Vec3 = axis[2] < 0 ? [-axis[0], -axis[1], -axis[2]] : axis;
  const over: Vec3 = Math.abs(eye[2]) > 0.9 ? [0, 1, 0] : [0, 0, 1];
  const own = new Set(swing.parts);
  const plain = plainScene(scene);
  const moves = (i: number): boolean => own.has(scene.solids[i] as (typeof scene.solids)[number]);
  const marked = new Set(plain.solids.filter((_, i) => moves(i)));
  return lineDrawing(plain, {
    view: viewFrom("along the hinges", eye, over),
    size: SIZE,
    title,
    look: (solid) =>
      marked.has(solid) ? "marked" : solid.kind === "screw" || solid.kind === "cap" ? "hidden" : "plain",
    ghosts: openDoor(swing),
    bands: arcBands(swing),
  });
}
