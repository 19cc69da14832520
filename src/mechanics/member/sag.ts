import type { Piecewise, Station } from "../piecewise.ts";
import { largest, linearCombination, valueAt } from "../piecewise.ts";
import { evaluate, signChanges } from "../polynomial.ts";
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

/** Adds s-derivative / 2 of the square of piece p of f: f f'. */
function addHalfSlopeOfSquare(f: Piecewise, p: number, out: Float64Array): void {
  const from = p * (f.degree + 1);
  for (let i = 0; i <= f.degree; i++) {
    const own = f.coefficients[from + i] as number;
    if (own === 0) continue;
    for (let j = 1; j <= f.degree; j++) {
      out[i + j - 1] = (out[i + j - 1] as number) + own * j * (f.coefficients[from + j] as number);
    }
  }
}

/** Where the distance √(y² + z²) is largest between two stations: at an end of a piece, or where y y' + z z' changes sign. */
function farthest(y: Piecewise, z: Piecewise, from: number, to: number): number {
  let best = from;
  let square = -1;
  const slope = new Float64Array(2 * Math.max(y.degree, z.degree));
  for (let p = 0; p < y.breaks.length - 1; p++) {
    const origin = y.breaks[p] as number;
    const lo = Math.max(origin, from) - origin;
    const hi = Math.min(y.breaks[p + 1] as number, to) - origin;
    if (!(hi >= lo)) continue;
    slope.fill(0);
    addHalfSlopeOfSquare(y, p, slope);
    addHalfSlopeOfSquare(z, p, slope);
    let top = slope.length - 1;
    while (top > 0 && slope[top] === 0) top--;
    const turning = signChanges(slope.slice(0, top + 1), lo, hi);
    for (let k = -1; k <= turning.length; k++) {
      const s = k < 0 ? lo : k === turning.length ? hi : (turning[k] as number);
      const across = evaluate(y.coefficients, p * (y.degree + 1), y.degree, s);
      const other = evaluate(z.coefficients, p * (z.degree + 1), z.degree, s);
      const own = across * across + other * other;
      if (own > square) {
        best = origin + s;
        square = own;
      }
    }
  }
  return best;
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
  if (!direction) {
    const at = farthest(y, z, from, to);
    const own = { y: valueAt(y, at), z: valueAt(z, at) };
    return { at, value: Math.hypot(own.y, own.z), ...own };
  }
  const along = linearCombination([
    [direction[0], y],
    [direction[1], z],
  ]);
  const { at, value } = largest(along, from, to);
  return { at, value, y: valueAt(y, at), z: valueAt(z, at) };
}
