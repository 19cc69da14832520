import type { Body } from "../../facts/bodies.ts";
import type { MovingShape } from "../../facts/moving-shapes.ts";
import { length } from "../../geometry/vector.ts";
import { MANY_BARS, thinned } from "../many-bars.ts";
import type { BarData, ShapeData } from "./model-data.ts";

const TO_MM = 1000;
/** Shapes of free size are given so large, mm. */
const FREE_SIZE = 100;
/** Stations of a bar in a frame of many, and the share of the greatest movement and turn to which they are given there: about a pixel. */
const FEW_STATIONS = 5;
const FINEST_SHARE = 1 / 100;

/** Decimals that tell this share of the greatest value, no more than are told otherwise. */
const digitsFor = (greatest: number, usual: number): number =>
  greatest > 0 ? Math.max(0, Math.min(usual, Math.ceil(-Math.log10(greatest * FINEST_SHARE)))) : 0;

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits)) + 0;

/** How far a skin goes that turns with its bar, so that what only rolls has a size too. */
function reachOf(
  { lineOf }: MovingShape,
  all: readonly Body[],
): { readonly most: number; readonly turns: number; readonly reach: number } {
  let [most, turns, reach] = [0, 0, 0];
  for (const { bar, half } of all) {
    const line = lineOf(bar.ref.id);
    for (const moved of line?.moved ?? []) most = Math.max(most, length(moved));
    for (const turn of line?.rolled ?? []) {
      turns = Math.max(turns, Math.abs(turn));
      reach = Math.max(reach, Math.abs(turn) * Math.hypot(half.y, half.z));
    }
  }
  return { most, turns, reach: Math.max(most, reach) };
}

/** The moving shapes as the viewer takes them: bent ones to true size, the others to a size that is well rounded. */
export function shapesData(
  shapes: readonly MovingShape[],
  all: readonly Body[],
): { readonly list: readonly ShapeData[]; movedOf(bar: string): BarData["moved"] } {
  const sized = shapes.map((shape) => {
    const { most, turns, reach } = reachOf(shape, all);
    const scale = shape.kind === "bent" || reach === 0 ? 1 : FREE_SIZE / TO_MM / reach;
    return { shape, scale, most: most * scale, turns: turns * scale };
  });
  return {
    list: sized.map(({ shape: { kind, name, factor, swings }, most, turns }) => ({
      kind,
      name,
      ...(factor === undefined ? {} : { factor: Number(factor.toPrecision(3)) }),
      ...(swings === undefined ? {} : { frequency: Number(swings.frequency.toPrecision(3)) }),
      most: rounded(most * TO_MM, 3),
      turns: rounded(turns, 5),
    })),
    movedOf: (bar) =>
      sized.map(({ shape, scale, most, turns }) => {
        const line = shape.lineOf(bar);
        const many = all.length > MANY_BARS;
        const fine = shape.kind === "bent" ? 3 : 2;
        const [digits, turnDigits] = many ? [digitsFor(most * TO_MM, fine), digitsFor(turns, 5)] : [fine, 5];
        const stations = (line?.moved ?? []).map((moved, i) => [
          ...moved.map((c) => rounded(c * scale * TO_MM, digits)),
          rounded((line?.rolled[i] ?? 0) * scale, turnDigits),
        ]);
        return (many ? thinned(stations, FEW_STATIONS) : stations).flat();
      }),
  };
}
