import type { Series } from "./series.ts";

/** A part as the frame file holds it. */
export type Part = Readonly<Record<string, unknown>>;
export type Point = readonly [number, number, number];

/** A frame file about to be written, in the order of its lines. */
export interface Drawing {
  readonly title: string;
  readonly notes: string;
  readonly kits: Readonly<Record<string, readonly Part[]>>;
  readonly bars: readonly Part[];
  readonly joints: readonly Part[];
  readonly panels: readonly Part[];
  readonly doors?: readonly Part[];
  readonly copies?: readonly Part[];
  readonly stands: readonly Part[];
  readonly loads: readonly Part[];
  readonly cases: readonly Part[];
}

/** What was asked for, in the units of the series. */
export interface Wish {
  readonly series: Series;
  readonly profile: string;
  /** Along x, y and z, over all. */
  readonly length: number;
  readonly depth: number;
  readonly height: number;
}

/** Least and greatest size that makes sense, in the units of the series. */
export type Range = readonly [least: number, greatest: number];

export interface Ranges {
  readonly length: Range;
  readonly depth: Range;
  readonly height: Range;
}

/** One kind of frame that can be started. */
export interface Kind {
  readonly article: string;
  /** Sizes that make sense with this series; undefined where it is too light for such a frame. A length and depth may ask for the height. */
  ranges(series: Series, height: number): Ranges | undefined;
  draw(wish: Wish): Drawing;
}

/** Places of a decimal that a drawing keeps: a ten-thousandth of a millimetre or inch. */
const KEPT = 1e4;

export function tidy(value: number): number {
  return Math.round(value * KEPT) / KEPT;
}

export function bar(id: string, profile: string, from: Point, to: Point): Part {
  return { id, profile, from: from.map(tidy), to: to.map(tidy) };
}

/** Points from first to last, at most `most` apart and at least two of them. */
export function spread(first: number, last: number, most: number): readonly number[] {
  const steps = Math.max(1, Math.ceil((last - first) / most - 1e-9));
  return Array.from({ length: steps + 1 }, (_, i) => tidy(first + ((last - first) * i) / steps));
}

export function ids(parts: readonly Part[]): readonly string[] {
  return parts.map((part) => String(part.id));
}

/** A bracket with side walls on each of these faces: as long as the profile is wide, one screw a leg, stiff enough to do without braces. */
export function brackets(series: Series, faces: readonly string[]): readonly Part[] {
  return faces.map((on) => ({ connector: `gusset-bracket-${series.size}`, on }));
}

/** One bracket with two screws along each leg, for where only one side is free. */
export function longBracket(series: Series, on: string): readonly Part[] {
  return [{ connector: `inside-bracket-${series.size}-long`, on }];
}

/**
 * Least distance between the outer feet of a frame that stands free, as a share of its height: a full load high up must not tip it on a
 * slope of 10°, twice tan 10° = 0.35 of its height, with something to spare.
 */
export const STEADY = 0.45;

/** Ordinary loads of a workshop in the units of the series. */
export function usualLoad(series: Series, load: "goods" | "light goods" | "lean" | "push"): number {
  const inch = series.units === "in-lbf-lb";
  // Brackets of the small profiles hold a third as much.
  const share = series.pitch < (inch ? 1.5 : 40) ? 0.33 : 1;
  switch (load) {
    case "goods":
      return (inch ? 0.14 : 1) * share; // psi, kPa: trays, boxes, tools side by side
    case "light goods":
      return (inch ? 0.1 : 0.7) * share;
    case "lean":
      return (inch ? 55 : 250) * (share < 1 ? 0.6 : 1); // lbf, N: a person leaning on an edge
    case "push":
      return inch ? 35 : 150; // lbf, N: a person pushing a cart or a door
  }
}
