import { evaluate, signChanges } from "./polynomial.ts";

/** A function of the station x given by one polynomial per piece, in s = x − start of the piece. It may jump at breaks. */
export interface Piecewise {
  /** Ascending, one more than there are pieces, m. */
  readonly breaks: Float64Array;
  readonly degree: number;
  /** degree + 1 coefficients per piece. */
  readonly coefficients: Float64Array;
}

/** A value and the station at which it occurs. */
export interface Station {
  readonly at: number;
  readonly value: number;
}

export interface Extrema {
  readonly min: Station;
  readonly max: Station;
}

const pieces = (p: Piecewise): number => p.breaks.length - 1;

/** Value at station x; at a jump the value on the asked side. Outside the range the nearest piece is continued. */
export function valueAt(p: Piecewise, x: number, side: "before" | "after" = "before"): number {
  const last = pieces(p) - 1;
  let i = 0;
  while (i < last && (side === "before" ? x > (p.breaks[i + 1] as number) : x >= (p.breaks[i + 1] as number))) i++;
  return evaluate(p.coefficients, i * (p.degree + 1), p.degree, x - (p.breaks[i] as number));
}

/** Smallest and largest value between two stations (default: everywhere), from both sides of jumps; the first place wins. */
export function extrema(p: Piecewise, from = -Infinity, to = Infinity): Extrema {
  let [least, leastAt, most, mostAt] = [Infinity, 0, -Infinity, 0];
  const stride = p.degree + 1;
  const c = p.coefficients;
  for (let i = 0; i < pieces(p); i++) {
    const origin = p.breaks[i] as number;
    const lo = Math.max(origin, from) - origin;
    const hi = Math.min(p.breaks[i + 1] as number, to) - origin;
    if (lo > hi) continue;
    const turning = turningPoints(c, i * stride, p.degree, lo, hi);
    for (let k = -1; k <= turning.length; k++) {
      const s = k < 0 ? lo : k === turning.length ? hi : (turning[k] as number);
      const value = evaluate(c, i * stride, p.degree, s);
      if (value < least) {
        least = value;
        leastAt = origin + s;
      }
      if (value > most) {
        most = value;
        mostAt = origin + s;
      }
    }
  }
  return { min: { at: leastAt, value: least }, max: { at: mostAt, value: most } };
}

const NONE: readonly number[] = [];

function turningPoints(c: Float64Array, at: number, degree: number, lo: number, hi: number): readonly number[] {
  let top = degree;
  while (top > 1 && c[at + top] === 0) top--;
  if (top <= 1) return NONE;
  if (top === 2) {
    const s = -(c[at + 1] as number) / (2 * (c[at + 2] as number));
    return s > lo && s < hi ? [s] : NONE;
  }
  const slope = new Float64Array(top);
  for (let i = 1; i <= top; i++) slope[i - 1] = i * (c[at + i] as number);
  return signChanges(slope, lo, hi);
}

/** The station where the magnitude is largest, with the signed value. */
export function largest(p: Piecewise, from?: number, to?: number): Station {
  const { min, max } = extrema(p, from, to);
  return -min.value > max.value ? min : max;
}

/** ∫ over x from one station to another, both within the range; exact for its polynomials. */
export function integralBetween(p: Piecewise, from: number, to: number): number {
  const stride = p.degree + 1;
  let sum = 0;
  for (let i = 0; i < pieces(p); i++) {
    const origin = p.breaks[i] as number;
    const lo = Math.max(origin, from) - origin;
    const hi = Math.min(p.breaks[i + 1] as number, to) - origin;
    if (lo >= hi) continue;
    for (let d = 0; d <= p.degree; d++)
      sum += ((p.coefficients[i * stride + d] as number) * (hi ** (d + 1) - lo ** (d + 1))) / (d + 1);
  }
  return sum;
}

/** Σ factor · function; all must have the same breaks. Use it for the stress at a point of the section, for example. */
export function linearCombination(parts: readonly (readonly [factor: number, of: Piecewise])[]): Piecewise {
  const first = parts[0];
  if (!first) throw new RangeError("a combination needs at least one function");
  const { breaks } = first[1];
  let degree = 0;
  for (const [, part] of parts) degree = Math.max(degree, part.degree);
  const stride = degree + 1;
  const coefficients = new Float64Array((breaks.length - 1) * stride);
  for (const [factor, part] of parts) {
    if (part.breaks.length !== breaks.length) throw new RangeError("functions with different breaks");
    for (let i = 0; i < breaks.length - 1; i++) {
      for (let d = 0; d <= part.degree; d++) {
        const at = i * stride + d;
        coefficients[at] =
          (coefficients[at] as number) + factor * (part.coefficients[i * (part.degree + 1) + d] as number);
      }
    }
  }
  return { breaks, degree, coefficients };
}

/** One function after the other along a bar that was split into members: stations run on. */
export function concatenate(parts: readonly Piecewise[]): Piecewise {
  let degree = 0;
  let count = 0;
  for (const part of parts) {
    degree = Math.max(degree, part.degree);
    count += pieces(part);
  }
  const breaks = new Float64Array(count + 1);
  const coefficients = new Float64Array(count * (degree + 1));
  let next = 0;
  for (const part of parts) {
    const shift = (breaks[next] as number) - (part.breaks[0] as number);
    for (let i = 0; i < pieces(part); i++, next++) {
      breaks[next + 1] = (part.breaks[i + 1] as number) + shift;
      for (let d = 0; d <= part.degree; d++) {
        coefficients[next * (degree + 1) + d] = part.coefficients[i * (part.degree + 1) + d] as number;
      }
    }
  }
  return { breaks, degree, coefficients };
}
