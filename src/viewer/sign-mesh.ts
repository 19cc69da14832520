import type { ModelData } from "../drawing/model3d/model-data.ts";
import type { Mesh } from "./mesh.ts";
import { add, cross, size, times, unit, type Vec, vecAt } from "./vec.ts";

/** What a sign is about, as the part of its mesh. */
export const LOAD_SIGN = -1;
const SUPPORT_SIGN = -2;

/** Size of heads as shares of their arrow, and of the signs of supports as a share of the frame. */
const HEAD = 0.26;
const BARB = 0.09;
const SUPPORT = 0.014;
/** No larger than this share of a usual bar: the signs of a long line of bars would hide it. */
const OF_BAR = 0.06;

type Line = readonly [Vec, Vec];

/** Four barbs at a place of an arrow, so that a head shows from every side. */
function head(from: Vec, to: Vec, at: Vec): readonly Line[] {
  const [along, long] = [unit(add(to, from, -1)), size(add(to, from, -1))];
  const u = unit(cross(along, Math.abs(along[2]) > 0.9 ? [1, 0, 0] : [0, 0, 1]));
  const back = add(at, along, -HEAD * long);
  return [u, times(u, -1), cross(along, u), cross(u, along)].map((way) => [at, add(back, way, BARB * long)]);
}

/** A pyramid under a foot: on rollers where it may move, with a cross in its base where it is anchored. */
function support({ at, hold }: ModelData["supports"][number], large: number): readonly Line[] {
  const tip = vecAt(at, 0);
  const corner = (x: number, y: number, down: number): Vec => add(tip, [x * large, y * large, -down * large]);
  const corners = [corner(-1, -1, 1.6), corner(1, -1, 1.6), corner(1, 1, 1.6), corner(-1, 1, 1.6)];
  const square = (points: readonly Vec[]): readonly Line[] =>
    points.map((point, i) => [point, points[(i + 1) % points.length] ?? point]);
  const lines = [...square(corners), ...corners.map((one): Line => [tip, one])];
  if (hold === "rolling") lines.push(...square(corners.map((one) => add(one, [0, 0, -0.6 * large]))));
  if (hold === "anchored")
    lines.push([corner(-1, -1, 1.6), corner(1, 1, 1.6)], [corner(1, -1, 1.6), corner(-1, 1, 1.6)]);
  return lines;
}

const inPairs = (list: readonly number[]): readonly Line[] =>
  Array.from({ length: list.length / 6 }, (_, i) => [vecAt(list, 6 * i), vecAt(list, 6 * i + 3)]);

/** Signs of loads, goods, supports and of the ways of doors, as lines that belong to no part; `across` is the size of the frame, `bar` that of a usual bar. */
export function signMesh({ arrows, moments, boxes, doors, supports }: ModelData, across: number, bar: number): Mesh {
  const ends = (sign: readonly number[]): Line => [vecAt(sign, 0), vecAt(sign, 3)];
  const loads = [
    ...arrows.map(ends).flatMap(([a, b]): readonly Line[] => [[a, b], ...head(a, b, b)]),
    // A moment has two heads on its axis.
    ...moments
      .map(ends)
      .flatMap(([a, b]) => [[a, b] as const, ...head(a, b, b), ...head(a, b, add(b, add(a, b, -1), 0.2))]),
    ...inPairs(boxes),
    // Every other stretch of a door's arc, so that it shows as dashed.
    ...doors.flatMap(({ arc }) => inPairs(arc.slice(0, 6 * Math.floor(arc.length / 6)))),
  ];
  const stood = supports.flatMap((one) => support(one, Math.min(SUPPORT * across, OF_BAR * bar)));
  const lines = [...loads, ...stood];
  return {
    at: Float32Array.from(lines.flat(2)),
    normal: new Float32Array(6 * lines.length),
    away: new Float32Array(6 * lines.length),
    part: Int32Array.from({ length: 2 * lines.length }, (_, i) => (i < 2 * loads.length ? LOAD_SIGN : SUPPORT_SIGN)),
    rides: new Int32Array(2 * lines.length).fill(-1),
    station: new Float32Array(2 * lines.length),
  };
}
