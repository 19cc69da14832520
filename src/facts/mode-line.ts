import { add, cross, dot, lerp, scale, subtract, along as toward, type Vec3 } from "../geometry/vector.ts";
import type { BarLine } from "./bent-line.ts";
import { type Body, cutStation } from "./bodies.ts";
import type { Structure } from "./structure.ts";

const triple = (list: Float64Array, at: number): Vec3 => [list[at] ?? 0, list[at + 1] ?? 0, list[at + 2] ?? 0];

/** How a piece of the structure moves in a mode: at shares of its length, three displacements and three rotations each, its start first. */
export interface ModePoints {
  readonly shares: readonly number[];
  readonly moved: Float64Array;
}

/** Points at the ends of equal parts of a piece. */
export function evenPoints(moved: Float64Array): ModePoints {
  const parts = moved.length / 6 - 1;
  return { shares: Array.from({ length: parts + 1 }, (_, i) => i / parts), moved };
}

/**
 * How a bar moves in a mode of the frame at `count` stations: between the points the mode was worked out at by the cubic that has their
 * displacements and rotations, as the elements have it (docs/method/mechanics.md). Undefined where the bar is no part of the structure.
 */
export function modeLine(
  along: (piece: number) => ModePoints,
  known: Structure,
  body: Body,
  count: number,
): BarLine | undefined {
  const pieces = known.piecesOf(body.bar.ref.id);
  if (pieces.length === 0) return undefined;
  const { x } = body.axes;
  const [from, to] = [cutStation(body, "from"), cutStation(body, "to")];
  const moved: Vec3[] = [];
  const rolled: number[] = [];
  const stationsOf = (piece: number): readonly [number, number] => known.pieces[piece]?.stations ?? [0, 0];
  for (let i = 0; i < count; i++) {
    const station = from + ((to - from) * i) / (count - 1);
    const piece = pieces.find((one) => station <= stationsOf(one)[1]) ?? pieces.at(-1) ?? 0;
    const [start, end] = stationsOf(piece);
    const { shares, moved: points } = along(piece);
    const share = Math.min(Math.max((station - start) / (end - start), 0), 1);
    const k = Math.max(
      0,
      Math.min(
        shares.findLastIndex((one) => one <= share),
        shares.length - 2,
      ),
    );
    const [low, high] = [shares[k] ?? 0, shares[k + 1] ?? 1];
    const [s, long] = [(share - low) / (high - low), (end - start) * (high - low)];
    const [a, b] = [triple(points, 6 * k), triple(points, 6 * k + 6)];
    const [turnA, turnB] = [triple(points, 6 * k + 3), triple(points, 6 * k + 9)];
    // Of the axis where it leaves a point: across by its rotation, along by the difference of the two.
    const slope = (turn: Vec3): Vec3 => toward(cross(turn, x), x, dot(subtract(b, a), x) / long);
    const ends = add(scale(a, 2 * s ** 3 - 3 * s ** 2 + 1), scale(b, 3 * s ** 2 - 2 * s ** 3));
    const left = toward(ends, slope(turnA), long * (s ** 3 - 2 * s ** 2 + s));
    moved.push(toward(left, slope(turnB), long * (s ** 3 - s ** 2)));
    rolled.push(dot(lerp(turnA, turnB, s), x));
  }
  return { moved, rolled };
}
