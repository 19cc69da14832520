import { cross, dot, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Dimension } from "./dimensions.ts";
import { type EdgePlace, inFace } from "./edge-places.ts";
import { type Area, type Band, lineDrawing } from "./line-drawing.ts";
import { roundAbout } from "./round-about.ts";
import type { Scene } from "./scene.ts";
import { viewFrom } from "./view.ts";

const SIZE: Vec2 = [300, 220];
const INK = "#20262b";
const HOLE = "#96270f";
const WANTED = "#84230f";
const SIDES = 32;
/** Room round what is measured, as a share of the length that is wanted, and the least of it, m. */
const ROOM = 1.2;
const LEAST = 0.03;
/** Where the dimension lines stand, picture units off the middle of the hole. */
const OFFS = [62, 84] as const;

/** What is measured to the edge and what would do, in words, and that length, m. */
export interface EdgeWords {
  readonly found: string;
  readonly wanted: string;
  readonly least: number;
}

/** With what is up in the frame up: along an upright bar, else square to what lies. */
function upOn(eye: Vec3, toward: Vec3): Vec3 {
  if (Math.abs(toward[2]) > 0.7) return toward[2] < 0 ? scale(toward, -1) : toward;
  const across = cross(eye, toward);
  const way = Math.abs(eye[2]) > 0.9 ? across[1] : across[2];
  return way < 0 ? scale(across, -1) : across;
}

/** A hole or nut square on near the edge it is too near to, with its distance and the least that would do. */
export function edgePicture(scene: Scene, place: EdgePlace, words: EdgeWords, title: string): string {
  const { at, eye, toward, distance, radius, nut } = place;
  const over = upOn(eye, toward);
  const reach = Math.max(words.least, Math.abs(distance), LEAST);
  const edge = inFace(place, distance, 0);
  const asked = inFace(place, distance - words.least, 0);
  const rim = Array.from({ length: SIDES + 1 }, (_, i): Vec3 => {
    const angle = (2 * Math.PI * i) / SIDES;
    return inFace(place, radius * Math.cos(angle), radius * Math.sin(angle));
  });
  const hole: Area = { rings: [rim], fill: "#e2a08f", name: "hole" };
  const [long, wide] = nut ?? [0, 0];
  const corner = (x: number, y: number): Vec3 => inFace(place, (x * long) / 2, (y * wide) / 2);
  const nutRing = [corner(1, 1), corner(1, -1), corner(-1, -1), corner(-1, 1), corner(1, 1)];
  const thin = (points: readonly Vec3[], name: string, ink: string, dashes?: string): Band => ({
    points,
    ink,
    wide: { units: 1.2 },
    name,
    ...(dashes === undefined ? {} : { dashes }),
  });
  // Dimension lines stand below what lies, and beside what stands.
  const aside = Math.abs(dot(over, toward)) > 0.7 ? cross(over, eye) : scale(over, -1);
  const measured = (from: Vec3, off: number, said: string, wanted: boolean): Dimension => ({
    from,
    to: edge,
    aside,
    off,
    words: said,
    wanted,
  });
  const focus = { at: inFace(place, distance / 2, 0), radius: ROOM * reach };
  const own = scene.solids.filter(({ kind, of }) => of.id === place.of && kind !== "screw" && kind !== "cap");
  return lineDrawing(
    { ...scene, solids: own.flatMap((solid) => roundAbout(solid, at, focus.radius) ?? []) },
    {
      view: viewFrom("square on", eye, over),
      size: SIZE,
      title,
      focus,
      areas: [...(nut ? [{ rings: [nutRing], fill: "#9fb0e0", name: "nut" }] : []), hole],
      bands: [
        ...(nut ? [thin(nutRing, "nut", INK)] : []),
        thin(rim, "rim", HOLE),
        thin(
          [inFace(place, distance - words.least, -reach), inFace(place, distance - words.least, reach)],
          "least",
          WANTED,
          "5 3",
        ),
      ],
      dimensions: [measured(at, OFFS[0], words.found, false), measured(asked, OFFS[1], words.wanted, true)],
    },
  );
}
