import type { ModelData, PathData } from "../drawing/model3d/model-data.ts";
import { carriedAs, LEAST, PATH_COLOURS, WIDEST, WORTH } from "../drawing/path-look.ts";
import { type Rgb, rgb } from "./colours.ts";
import { type Fibre, Growing, type Mesh, stationOn } from "./mesh.ts";
import { add, cross, mix, size, times, unit, type Vec, vecAt } from "./vec.ts";

/** What the colours of a load path say. */
export const PATH_INKS: readonly { readonly words: string; readonly colour: Rgb }[] = [
  { words: "pressed", colour: rgb(PATH_COLOURS.pressed) },
  { words: "pulled", colour: rgb(PATH_COLOURS.pulled) },
  { words: "borne across the bar", colour: rgb(PATH_COLOURS.across) },
  { words: "arrow with a plate: it bears", colour: rgb(PATH_COLOURS.bears) },
  { words: "arrow without: fasteners hold", colour: rgb(PATH_COLOURS.held) },
  { words: "on the floor", colour: rgb(PATH_COLOURS.floor) },
];
/** Places in that list. */
const INK = { pressed: 0, pulled: 1, across: 2, seat: 3, held: 4, floor: 5 } as const;
/** The least width of a rod, mm: the model is in mm. */
const LEAST_MM = 1000 * LEAST;

interface Rider {
  readonly ink: number;
  readonly bar: number;
  ride(p: Vec): number;
}

function sides(axis: Vec): readonly [Vec, Vec] {
  const u = unit(cross(axis, Math.abs(axis[2]) > 0.9 ? [1, 0, 0] : [0, 0, 1]));
  return [u, cross(axis, u)];
}

/** A square rod between two points, its width at each; a pyramid where one is zero. */
function rod(into: Growing, a: Vec, b: Vec, widths: readonly [number, number], { ink, bar, ride }: Rider): void {
  const axis = unit(add(b, a, -1));
  const [u, v] = sides(axis);
  const corner = (p: Vec, k: number, wide: number): Vec => {
    const [s, t] = [k === 0 || k === 3 ? 1 : -1, k < 2 ? 1 : -1];
    return add(add(p, u, (s * wide) / 2), v, (t * wide) / 2);
  };
  const put = (points: readonly Vec[], normal: Vec): void => {
    for (const p of points) into.put(p, normal, ink, bar, ride(p));
  };
  for (let k = 0; k < 4; k++) {
    const [p, q] = [corner(a, k, widths[0]), corner(a, (k + 1) % 4, widths[0])];
    const [r, s] = [corner(b, (k + 1) % 4, widths[1]), corner(b, k, widths[1])];
    const normal = unit(add(mix(p, q, 0.5), a, -1));
    put([p, q, r, p, r, s], normal);
  }
  for (const [p, wide, side] of [
    [a, widths[0], -1],
    [b, widths[1], 1],
  ] as const) {
    const [c0, c1, c2, c3] = [0, 1, 2, 3].map((k) => corner(p, k, wide));
    if (c0 && c1 && c2 && c3) put([c0, c1, c2, c0, c2, c3], times(axis, side));
  }
}

/** An arrow that ends at `tip`; with a plate before it where it bears. */
function arrow(into: Growing, tip: Vec, force: Vec, long: number, wide: number, plate: boolean, rider: Rider): void {
  const way = unit(force);
  const neck = add(tip, way, -Math.min(0.45 * long, 2.6 * wide));
  rod(into, add(tip, way, -long), neck, [wide, wide], rider);
  rod(into, neck, tip, [2.6 * wide, 0], rider);
  if (plate) rod(into, tip, add(tip, way, 0.5 * wide), [3.4 * wide, 3.4 * wide], rider);
}

/** The load path as bodies: rods in the bars as thick as what they carry, arrows beside the joints and under the feet. */
export function pathMesh(model: ModelData, axes: readonly Fibre[], path: PathData, middle: Vec, across: number): Mesh {
  const into = new Growing();
  const slim = Math.min(...model.profiles.flatMap(({ half }) => half)) * 2;
  let most = 1e-9;
  for (const list of path.carried) for (let i = 2; i < list.length; i += 4) most = Math.max(most, list[i] ?? 0);
  path.carried.forEach((list, bar) => {
    const axis = axes[bar];
    if (!axis) return;
    const ride = (p: Vec): number => stationOn(axis, p);
    for (let i = 0; i < list.length; i += 4) {
      const [from = 0, to = 0, force = 0, axial = 0] = list.slice(i, i + 4);
      const ink = INK[carriedAs(force, axial)];
      const wide = Math.max(LEAST_MM, (WIDEST * slim * force) / most);
      rod(into, mix(axis.from, axis.to, from), mix(axis.from, axis.to, to), [wide, wide], { ink, bar, ride });
    }
  });
  const greatest = Math.max(
    1e-9,
    ...path.passings.flatMap(({ seat, held }) => [size(vecAt(seat, 0)), size(vecAt(held, 0))]),
  );
  const sized = (force: Vec): readonly [number, number] => {
    const share = Math.min(1, size(force) / greatest);
    return [across * (0.035 + 0.04 * share), slim * (0.1 + 0.2 * share)];
  };
  for (const { taker, at, seat, held } of path.passings) {
    const axis = axes[taker];
    const joint = vecAt(at, 0);
    // Beside the joint, on the side away from the middle, so that bars do not hide it.
    const out: Vec = [joint[0] - middle[0], joint[1] - middle[1], 0];
    const aside = size(out) > 1 ? unit(out) : ([0, -1, 0] as const);
    let place = 1.1 * slim;
    for (const [list, ink] of [
      [seat, INK.seat],
      [held, INK.held],
    ] as const) {
      const force = vecAt(list, 0);
      if (size(force) < WORTH * greatest) continue;
      const [long, wide] = sized(force);
      const tip = add(add(joint, aside, place), unit(force), long / 2);
      arrow(into, tip, force, long, wide, ink === INK.seat, {
        ink,
        bar: taker,
        ride: () => (axis ? stationOn(axis, joint) : 0),
      });
      place += 0.9 * slim;
    }
  }
  for (const { at, force } of path.feet) {
    const vector = vecAt(force, 0);
    if (size(vector) < WORTH * greatest) continue;
    const [long, wide] = sized(vector);
    const tip = add(vecAt(at, 0), unit(vector), long);
    arrow(into, tip, vector, long, wide, false, { ink: INK.floor, bar: -1, ride: () => 0 });
  }
  return into.done([]);
}
