import type { Piecewise, Station } from "../piecewise.ts";
import { extrema, largest, linearCombination, valueAt } from "../piecewise.ts";
import type { Deflections } from "./fields.ts";

/** How far the axis departs from the straight line between its displaced points at two stations. */
export interface Sag extends Station {
  /** Components along local y and z at that station, m. */
  readonly y: number;
  readonly z: number;
}

/** Lateral deflection relative to the chord between stations `from` and `to`, m. */
export function relativeToChord(deflection: Piecewise, from: number, to: number): Piecewise {
  const first = valueAt(deflection, from, "after");
  const slope = (valueAt(deflection, to, "before") - first) / (to - from);
  const degree = Math.max(1, deflection.degree);
  const stride = degree + 1;
  const count = deflection.breaks.length - 1;
  const coefficients = new Float64Array(count * stride);
  for (let p = 0; p < count; p++) {
    for (let d = 0; d <= deflection.degree; d++) {
      coefficients[p * stride + d] = deflection.coefficients[p * (deflection.degree + 1) + d] as number;
    }
    const start = deflection.breaks[p] as number;
    coefficients[p * stride] = (coefficients[p * stride] as number) - first - slope * (start - from);
    coefficients[p * stride + 1] = (coefficients[p * stride + 1] as number) - slope;
  }
  return { breaks: deflection.breaks, degree, coefficients };
}

function square(a: Piecewise, b: Piecewise): Piecewise {
  const degree = 2 * Math.max(a.degree, b.degree);
  const count = a.breaks.length - 1;
  const coefficients = new Float64Array(count * (degree + 1));
  for (const f of [a, b]) {
    for (let p = 0; p < count; p++) {
      const from = p * (f.degree + 1);
      for (let i = 0; i <= f.degree; i++) {
        const own = f.coefficients[from + i] as number;
        if (own === 0) continue;
        for (let j = 0; j <= f.degree; j++) {
          const at = p * (degree + 1) + i + j;
          coefficients[at] = (coefficients[at] as number) + own * (f.coefficients[from + j] as number);
        }
      }
    }
  }
  return { breaks: a.breaks, degree, coefficients };
}

/**
 * The largest sag between two stations: of the component along `direction` (unit, local y and z; signed) when given,
 * else of the distance from the chord.
 */
export function sag(
  lateral: Pick<Deflections, "y" | "z">,
  from: number,
  to: number,
  direction?: readonly [y: number, z: number],
): Sag {
  const y = relativeToChord(lateral.y, from, to);
  const z = relativeToChord(lateral.z, from, to);
  const worst = direction
    ? largest(
        linearCombination([
          [direction[0], y],
          [direction[1], z],
        ]),
        from,
        to,
      )
    : extrema(square(y, z), from, to).max;
  const own = { y: valueAt(y, worst.at), z: valueAt(z, worst.at) };
  return { at: worst.at, value: direction ? worst.value : Math.hypot(own.y, own.z), ...own };
}
