import { add, dot, scale, type Vec3 } from "../geometry/vector.ts";
import type { Body } from "./bodies.ts";
import { planeAxes } from "./plane-axes.ts";
import { liesUnder } from "./sheet-normal.ts";

export type Axes = readonly [Vec3, Vec3];

/** Angles (radians) and areas (as a share) that differ by less are the rounding of coordinates. */
const ALIKE = 1e-6;

/** Bars that lie under a sheet run along it; where all stand, the sides of their sections do. */
function runsOf(normal: Vec3, bars: readonly Body[]): readonly Vec3[] {
  const lying = bars.filter((body) => liesUnder(body, normal));
  return lying.length > 0 ? lying.map(({ axes }) => axes.x) : bars.map(({ axes }) => axes.y);
}

/** How far the drawing's axes have to turn in the plane, by 45° at most, for one of them to follow a direction. */
function turnTo(run: Vec3, [u, v]: Axes): number {
  const quarters = Math.atan2(dot(run, v), dot(run, u)) / (Math.PI / 2);
  // At 45° either way to the same side, whatever the rounding.
  const turn = (quarters - Math.round(quarters - ALIKE)) * (Math.PI / 2);
  return Math.abs(turn) < ALIKE ? 0 : turn;
}

function turned([u, v]: Axes, turn: number): Axes {
  if (turn === 0) return [u, v];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [add(scale(u, c), scale(v, s)), add(scale(v, c), scale(u, -s))];
}

/** Of the rectangle round the bars. */
function areaOf(axes: Axes, bars: readonly Body[]): number {
  const [a, b] = axes.map((axis) => {
    const places = bars.flatMap(({ prism }) => (prism?.vertices ?? []).map((vertex) => dot(vertex, axis)));
    return (
      places.reduce((most, at) => Math.max(most, at), -Infinity) -
      places.reduce((least, at) => Math.min(least, at), Infinity)
    );
  });
  return (a ?? 0) * (b ?? 0);
}

/**
 * The ways in which the sides of a sheet on bars run: along one of the bars, that with the smallest rectangle round them all. Of
 * equals the one turned least from the axes of the drawing; first and second, − and + are those of the axis each is nearest to.
 */
export function sheetAxes(normal: Vec3, bars: readonly Body[]): Axes {
  const drawn = planeAxes(normal);
  const turns = runsOf(normal, bars).map((run) => turnTo(run, drawn));
  const tried = turns.map((turn) => ({ turn, area: areaOf(turned(drawn, turn), bars) }));
  const least = Math.min(...tried.map(({ area }) => area));
  const alike = tried.filter(({ area }) => area <= least * (1 + ALIKE));
  const [best] = alike.sort((a, b) => Math.abs(a.turn) - Math.abs(b.turn) || b.turn - a.turn);
  return turned(drawn, best?.turn ?? 0);
}
