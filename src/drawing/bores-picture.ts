import { boredHoles, type HolePair } from "../facts/bored-holes.ts";
import { factOf } from "../facts/fact.ts";
import type { Bored } from "../facts/placed.ts";
import { closestPoints } from "../geometry/segment.ts";
import {
  add,
  cross,
  dot,
  midpoint,
  normalise,
  perpendicularPair,
  scale,
  subtract,
  type Vec2,
  type Vec3,
} from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Area, type Band, lineDrawing } from "./line-drawing.ts";
import { roundAbout } from "./round-about.ts";
import type { Scene } from "./scene.ts";
import { type View, viewFrom } from "./view.ts";

const SIZE: Vec2 = [300, 240];
const INKS = ["#96270f", "#1f2f8f"] as const;
const FILLS = ["#e2a08f", "#9fb0e0"] as const;
const SIDES = 24;
/** Room round the place where they come nearest, m. */
const ROOM = 0.055;

/** The pair of holes in a bar that a finding measured this metal between, m. */
export const holePair = (frame: Frame, bar: string, metal: number): HolePair | undefined =>
  factOf(boredHoles, frame).pairs.find((pair) => pair.bar === bar && pair.metal === metal);

const rimOf = ({ line, radius }: Bored, end: Vec3): readonly Vec3[] => {
  const [u, v] = perpendicularPair(normalise(subtract(line.to, line.from)));
  return Array.from({ length: SIDES + 1 }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES;
    return add(end, add(scale(u, radius * Math.cos(angle)), scale(v, radius * Math.sin(angle))));
  });
};

/** A hole as it looks from there: both rims and the two edges of its wall. */
function drawnHole(hole: Bored, i: 0 | 1, { toward }: View): { readonly area: Area; readonly bands: readonly Band[] } {
  const { line, radius } = hole;
  const way = normalise(subtract(line.to, line.from));
  const beside = cross(way, toward);
  const side = Math.hypot(...beside) > 1e-6 ? scale(normalise(beside), radius) : undefined;
  const name = `${hole.what} of ${hole.by.id}`;
  const wall = side
    ? [
        [add(line.from, side), add(line.to, side)],
        [subtract(line.from, side), subtract(line.to, side)],
      ]
    : [];
  const bands = [rimOf(hole, line.from), rimOf(hole, line.to), ...wall].map(
    (points): Band => ({ points, ink: INKS[i], wide: { units: 1.5 }, name }),
  );
  const body = side
    ? [add(line.from, side), add(line.to, side), subtract(line.to, side), subtract(line.from, side)]
    : rimOf(hole, dot(way, toward) > 0 ? line.to : line.from);
  return { area: { rings: [body], fill: FILLS[i], name }, bands };
}

/** From where both holes are seen from the side as far as may be, and from outside and above. */
function eyeOn({ a, b }: HolePair): Vec3 {
  const ways = [a, b].map(({ line }) => normalise(subtract(line.to, line.from)));
  const corners = [1, -1].flatMap((x) => [1, -1].map((y): Vec3 => normalise([x, y, 0.8])));
  const seen = (eye: Vec3): number => Math.max(...ways.map((way) => Math.abs(dot(way, eye))));
  return corners.reduce((best, eye) => (seen(eye) < seen(best) - 1e-9 ? eye : best));
}

/** Two holes or screws inside a bar, where they come nearest to each other: through the bar, each in its ink and numbered. */
export function boresPicture(scene: Scene, pair: HolePair, title: string): string {
  const { first, second } = closestPoints(pair.a.line, pair.b.line);
  const at = midpoint(first, second);
  const view = viewFrom("near", eyeOn(pair), [0, 0, 1]);
  const holes = [drawnHole(pair.a, 0, view), drawnHole(pair.b, 1, view)];
  const own = scene.solids.filter(({ kind, of }) => kind === "bar" && of.id === pair.bar);
  const mark = ({ line }: Bored, word: string) => ({
    at: [line.from, line.to].reduce((a, b) =>
      Math.hypot(...subtract(a, at)) < Math.hypot(...subtract(b, at)) ? b : a,
    ),
    word,
  });
  return lineDrawing(
    { ...scene, solids: own.flatMap((solid) => roundAbout(solid, at, ROOM) ?? []) },
    {
      view,
      size: SIZE,
      title,
      look: () => "faint",
      focus: { at, radius: ROOM },
      areas: holes.map(({ area }) => area),
      bands: holes.flatMap(({ bands }) => bands),
      marks: [mark(pair.a, "1"), mark(pair.b, "2")],
    },
  );
}
