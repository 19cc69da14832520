import { shifted } from "../geometry/prism.ts";
import { along, cross, dot, length, normalise, subtract, type Vec3 } from "../geometry/vector.ts";
import { farthest, isLeaf, type Swinging } from "./door-swing.ts";
import { measuredPicture } from "./measured-picture.ts";
import type { Scene } from "./scene.ts";
import { type Solid, skins } from "./solids/solid.ts";

const GHOST = "#96270f";
const UP: Vec3 = [0, 0, 1];
/** Where the dimension stands off the corner, picture units. */
const OFF = 60;
/** Corners this much nearer to the hinges are as far from them, m. */
const AS_FAR = 1e-4;

function outFrom(tip: Vec3, { point, axis }: Swinging["pin"]): Vec3 {
  const from = subtract(tip, point);
  return normalise(along(from, axis, -dot(from, axis)));
}

/** The corner of what comes down that lies farthest from the hinges, and lowest there. */
function freeCorner({ parts, pin }: Swinging, by: string | undefined): Vec3 {
  const named = parts.filter(({ of }) => of.id === by);
  const down = named.length > 0 ? named : parts.filter(isLeaf);
  const tip = farthest(down, pin);
  const out = outFrom(tip, pin);
  return down
    .flatMap(({ prism }) => prism.vertices)
    .filter((corner) => dot(subtract(corner, tip), out) > -AS_FAR)
    .reduce((a, b) => (b[2] < a[2] - 1e-6 ? b : a), tip);
}

/** The free corner of a door from its front, or that of one of its parts: as drawn, and in outline where it comes down to by so much, m. Undefined where its leaf lies. */
export function cornerPicture(
  scene: Scene,
  swing: Swinging,
  by: string | undefined,
  drop: number,
  words: string,
): string | undefined {
  const corner = freeCorner(swing, by);
  const out = outFrom(corner, swing.pin);
  const front = cross(out, UP);
  if (length(front) < 0.1) return undefined;
  const down = along(corner, UP, -drop);
  const own = new Set(swing.parts);
  const lowered = (solid: Solid): Solid => {
    const prism = shifted(solid.prism, [0, 0, -drop]);
    return { ...solid, prism, surfaces: skins(prism) };
  };
  return measuredPicture(
    scene,
    {
      from: corner,
      to: down,
      eye: normalise(front),
      over: UP,
      dimensions: [{ from: corner, to: down, aside: out, off: OFF, words }],
      look: (solid) =>
        solid.kind === "screw" || solid.kind === "cap" ? undefined : own.has(solid) ? "marked" : "faint",
      ghosts: swing.parts.filter(isLeaf).map((solid) => ({ solid: lowered(solid), ink: GHOST, width: 1 })),
    },
    `the free corner of ${swing.door} from its front`,
  );
}
