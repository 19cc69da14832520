import type { TipData } from "../drawing/model3d/model-data.ts";
import type { Rgb } from "./colours.ts";
import { joined, looseMesh } from "./loose-mesh.ts";
import type { Mesh } from "./mesh.ts";
import { add, mix, size, type Vec, vecAt } from "./vec.ts";

/** Inks by what a line is of: the line it tips over, the centre of mass and its plumb line. */
export const TIP_INKS: readonly Rgb[] = [
  [150, 39, 15],
  [31, 47, 143],
];

/** Half the size of the mark of the centre of mass and of the breadth of the line, as shares of the frame; a line a pixel wide would not be found among edges. */
const MARK = 0.022;
const BROAD = 0.0035;
/** Dashes of the way from the line to the plumb line. */
const DASHES = 15;

/** A strip about a line on the floor, as triangles. */
function strip(from: Vec, to: Vec, inward: Vec, half: number): readonly Vec[] {
  const [a, b] = [add(from, inward, half), add(to, inward, half)];
  const [c, d] = [add(to, inward, -half), add(from, inward, -half)];
  return [a, b, c, a, c, d];
}

const dashed = (from: Vec, to: Vec): readonly Vec[] =>
  Array.from({ length: DASHES }, (_, i) =>
    i % 2 === 0 ? [mix(from, to, i / DASHES), mix(from, to, (i + 1) / DASHES)] : [],
  ).flat();

/** The line a frame tips over as a strip on the floor; its centre of mass as eight faces about a cross, over its plumb line, and the way from there to the line. */
export function tipMeshes(
  { line, centre, below, nearest, inward }: TipData,
  across: number,
): { readonly filled: Mesh; readonly lines: Mesh } {
  const [from, to] = [vecAt(line, 0), vecAt(line, 3)];
  const edge = strip(from, to, vecAt(inward, 0), BROAD * across);
  const way = [from, to];
  if (centre.length === 0) return { filled: looseMesh(edge), lines: looseMesh(way, 0) };
  const [at, foot, near] = [vecAt(centre, 0), vecAt(below, 0), vecAt(nearest, 0)];
  const half = MARK * across;
  const arms = ([0, 1, 2] as const).map((axis) =>
    [-half, half].map(
      (by): Vec => [at[0] + (axis === 0 ? by : 0), at[1] + (axis === 1 ? by : 0), at[2] + (axis === 2 ? by : 0)],
    ),
  );
  const [xs = [], ys = [], zs = []] = arms;
  // Every other of the eight faces between the arms, as on a quartered disc.
  const faces = [0, 1].flatMap((x) =>
    [0, 1].flatMap((y) =>
      [0, 1].flatMap((z) => ((x + y + z) % 2 === 0 ? [xs[x] ?? at, ys[y] ?? at, zs[z] ?? at] : [])),
    ),
  );
  const plumb = size(add(at, foot, -1)) > 0 ? [at, foot] : [];
  return {
    filled: looseMesh([...edge, ...faces]),
    lines: joined([looseMesh(way, 0), looseMesh([...arms.flat(), ...plumb, ...dashed(near, foot)], 1)]),
  };
}
