import { type Body, bodies, cutPoint } from "../facts/bodies.ts";
import { factOf } from "../facts/fact.ts";
import type { LoadPath } from "../facts/load-paths.ts";
import { along, cross, distance, length, lerp, normalise, scale, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { Frame } from "../model/frame.ts";
import { type Band, lineDrawing } from "./line-drawing.ts";
import { MANY_BARS } from "./many-bars.ts";
import { carriedAs, LEAST, PATH_COLOURS, WIDEST, WORTH } from "./path-look.ts";
import { plainScene, type Scene } from "./scene.ts";
import { views } from "./view.ts";

const SIZE: Vec2 = [640, 470];
/** Lengths of arrows as shares of the frame's size. */
const SHORT = 0.03;
const LONG = 0.05;
/** Feet named on the picture, those that bear most; of more the numbers stand beside it. */
const NAMED_FEET = 40;

/** Letters of a foot's name on the picture: longer ones would hide it, and stand beside it whole. */
const LETTERS = 20;
const shortened = (id: string): string => (id.length > LETTERS ? `${id.slice(0, LETTERS - 1)}…` : id);

const ink = (of: keyof typeof PATH_COLOURS): string => `#${PATH_COLOURS[of]}`;
const [BEARS, HELD, FLOOR] = [ink("bears"), ink("held"), ink("floor")];

function barBands(body: Body, path: LoadPath, most: number, slim: number): readonly Band[] {
  const [from, to] = [cutPoint(body, "from"), cutPoint(body, "to")];
  return path.carriedBy(body.bar.ref.id).map(({ from: a, to: b, size, axial }) => ({
    points: [lerp(from, to, a), lerp(from, to, b)],
    ink: ink(carriedAs(size, axial)),
    wide: { size: Math.max(LEAST, (WIDEST * slim * size) / most) },
    name: body.bar.ref.id,
  }));
}

/** Shaft and barbs of an arrow that ends at `tip`; a line across its tip where it bears. */
function arrowBands(name: string, tip: Vec3, force: Vec3, long: number, ink: string, bears: boolean): readonly Band[] {
  const { toward } = views.isometric;
  const way = normalise(force);
  const across = normalise(cross(way, toward));
  const barb = (side: number): Vec3 => along(along(tip, way, -0.3 * long), across, side * 0.16 * long);
  const wide = { units: 1.6 };
  const bands: Band[] = [
    { points: [along(tip, way, -long), tip], ink, wide, name },
    { points: [barb(1), tip, barb(-1)], ink, wide, name },
  ];
  const plate = (side: number): Vec3 => along(tip, across, side * 0.22 * long);
  if (bears) bands.push({ points: [plate(1), plate(-1)], ink, wide: { units: 2.4 }, name });
  return bands;
}

/** How a set of loads runs through the frame: bars as thick as what they carry, arrows beside the joints and under the feet. */
export function pathPicture(frame: Frame, scene: Scene, path: LoadPath, title: string): string {
  const all = [...factOf(bodies, frame).values()].filter(({ prism }) => prism);
  const slim = 2 * Math.min(...all.flatMap(({ half }) => [half.y, half.z]));
  const sizes = all.flatMap(({ bar }) => path.carriedBy(bar.ref.id).map(({ size }) => size));
  const most = Math.max(1e-9, ...sizes);
  const points = all.flatMap(({ bounds }) => [bounds.min, bounds.max]);
  const middle = scale(
    points.reduce<Vec3>((sum, p) => along(sum, p, 1), [0, 0, 0]),
    1 / Math.max(1, points.length),
  );
  const size = Math.max(...points.map((p) => 2 * distance(p, middle)));
  const greatest = Math.max(1e-9, ...path.passings.flatMap(({ seat, held }) => [length(seat), length(held)]));
  const longOf = (force: Vec3): number => size * (SHORT + LONG * Math.min(1, length(force) / greatest));
  const arrows = path.passings.flatMap(({ joint, at, seat, held }) => {
    const out: Vec3 = [at[0] - middle[0], at[1] - middle[1], 0];
    const aside: Vec3 = length(out) > 1e-3 ? normalise(out) : [0, -1, 0];
    let place = 1.1 * slim;
    return (
      [
        [seat, BEARS],
        [held, HELD],
      ] as const
    ).flatMap(([force, ink]) => {
      if (length(force) < WORTH * greatest) return [];
      const long = longOf(force);
      const tip = along(along(at, aside, place), normalise(force), long / 2);
      place += 0.9 * slim;
      return arrowBands(joint.id, tip, force, long, ink, ink === BEARS);
    });
  });
  const feet = path.feet.flatMap(({ ref, at, force }) =>
    length(force) < WORTH * greatest
      ? []
      : arrowBands(ref.id, along(at, normalise(force), longOf(force)), force, longOf(force), FLOOR, false),
  );
  const heaviest = [...path.feet].sort((a, b) => length(b.force) - length(a.force)).slice(0, NAMED_FEET);
  const named = path.feet.length > NAMED_FEET ? heaviest : path.feet;
  // Of many bars what they carry is enough to tell where they are.
  const bars = all.length > MANY_BARS ? "hidden" : "faint";
  return lineDrawing(plainScene(scene), {
    view: views.isometric,
    size: SIZE,
    title,
    look: ({ kind }) => (kind === "bar" ? bars : kind === "stand" ? "faint" : "hidden"),
    bands: [...all.flatMap((body) => barBands(body, path, most, slim)), ...arrows, ...feet],
    marks: named.map(({ ref, at }) => ({ at, word: shortened(ref.id), weight: "light" as const })),
  });
}
