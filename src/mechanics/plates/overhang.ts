import { type Plate, rigidity } from "./levy.ts";
import type { PlatePeak } from "./peak.ts";

/** A sheet that reaches out past the last line that holds it, as a strip across that line. Lengths in m. */
export interface Overhang {
  /** From the line to the free edge. */
  readonly length: number;
  /** From the line back to the next one that holds the sheet. */
  readonly back: number;
  /** Between the bars that hold the sheet along its sides; Infinity where none do. */
  readonly between: number;
}

/**
 * Middle slope over M b / D of a plate turned along one edge by M per length, held at its sides b apart and long the other way: with
 * w = A y e^(−αy) sin αx each sine gives a slope M / 2αD, α = nπ/b, and a constant M has the amplitudes 4/nπ: 2G/π² with Catalan's
 * constant G = Σ ±1/n² over odd n.
 */
const HELD_AT_SIDES = (2 * 0.915965594) / Math.PI ** 2;

/**
 * What the free edge of an overhang gives and the stress at its root under a pressure (Pa): a cantilever strip of length a, turned at
 * its root by what its own moment q a²/2 bends the field behind. That is M L / 3D for a strip on two lines (Timoshenko and Young), and
 * no more than 0.186 M b / D where the sides of the field are held b apart. What the load of that field lifts is left out: it may be away.
 */
export function overhangPeak(plate: Plate, { length, back, between }: Overhang, pressure: number): PlatePeak {
  const moment = (pressure * length ** 2) / 2;
  const turned = moment * Math.min(back / 3, HELD_AT_SIDES * between);
  return {
    deflection: ((pressure * length ** 4) / 8 + turned * length) / rigidity(plate),
    stress: (6 * moment) / plate.thickness ** 2,
  };
}
