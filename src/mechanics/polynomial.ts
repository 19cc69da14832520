/** Polynomials of low degree, coefficients from the constant up, held in a slice of a flat array. */

/** c[at] + c[at+1] s + … + c[at+degree] s^degree. */
export function evaluate(c: Float64Array, at: number, degree: number, s: number): number {
  let value = c[at + degree] as number;
  for (let i = degree - 1; i >= 0; i--) value = value * s + (c[at + i] as number);
  return value;
}

/** A bracket of doubles shrinks to neighbouring numbers in at most about this many steps. */
const MOST_STEPS = 200;
/** A root is found when steps are this small beside the interval it was looked for in. */
const SETTLED = 4 * Number.EPSILON;

/** The only root between lo and hi, through which the values rise or fall; Newton steps kept inside a shrinking bracket. */
function bracketedRoot(c: Float64Array, degree: number, lo: number, hi: number, rising: boolean): number {
  let [a, b] = [lo, hi];
  const settled = SETTLED * Math.max(Math.abs(lo), Math.abs(hi));
  let x = (a + b) / 2;
  for (let step = 0; step < MOST_STEPS; step++) {
    let value = c[degree] as number;
    let slope = 0;
    for (let i = degree - 1; i >= 0; i--) {
      slope = slope * x + value;
      value = value * x + (c[i] as number);
    }
    if (value === 0) return x;
    if (value > 0 === rising) b = x;
    else a = x;
    const newton = x - value / slope;
    const next = newton > a && newton < b ? newton : (a + b) / 2;
    if (Math.abs(next - x) <= settled) return next;
    x = next;
  }
  return x;
}

/** Simple roots of a s² + b s + c inside (lo, hi), without the cancellation of the school formula. */
function quadraticRoots(a: number, b: number, c: number, lo: number, hi: number): number[] {
  const discriminant = b * b - 4 * a * c;
  if (!(discriminant > 0)) return [];
  const q = -(b + (b >= 0 ? 1 : -1) * Math.sqrt(discriminant)) / 2;
  const [first, second] = q / a < c / q ? [q / a, c / q] : [c / q, q / a];
  return [first, second].filter((s) => s > lo && s < hi);
}

/** Halving an interval this often leaves 1e-12 of it: roots closer together than that count as one. */
const MOST_HALVINGS = 40;

interface Part {
  readonly lo: number;
  readonly hi: number;
  readonly halvings: number;
  /** Bernstein coefficients over [lo, hi]. */
  readonly b: Float64Array;
}

/** Bernstein coefficients of the polynomial over [lo, hi] (Farouki and Rajan 1987): shift, scale, change the basis. */
function bernstein(c: Float64Array, degree: number, lo: number, hi: number): Float64Array {
  const t = c.slice(0, degree + 1);
  for (let i = 0; i < degree; i++) {
    for (let j = degree - 1; j >= i; j--) t[j] = (t[j] as number) + lo * (t[j + 1] as number);
  }
  let [power, binomial] = [1, 1];
  for (let i = 0; i <= degree; i++) {
    t[i] = ((t[i] as number) * power) / binomial;
    power *= hi - lo;
    binomial = (binomial * (degree - i)) / (i + 1);
  }
  for (let i = 1; i <= degree; i++) {
    for (let j = degree; j >= i; j--) t[j] = (t[j] as number) + (t[j - 1] as number);
  }
  return t;
}

/** Bernstein coefficients this small beside the largest one over the whole interval are rounding of zero. */
const NOISE = 1e-14;

/** Changes of sign among the coefficients, and the signs with which they begin and end (0 when all are rounding). */
function signs(
  b: Float64Array,
  noise: number,
): { readonly changes: number; readonly first: number; readonly last: number } {
  let [changes, first, last] = [0, 0, 0];
  for (let i = 0; i < b.length; i++) {
    const value = b[i] as number;
    if (Math.abs(value) <= noise) continue;
    const sign = value > 0 ? 1 : -1;
    if (last !== 0 && sign !== last) changes++;
    if (first === 0) first = sign;
    last = sign;
  }
  return { changes, first, last };
}

/** De Casteljau's halving. */
function halves({ lo, hi, halvings, b }: Part): readonly [Part, Part] {
  const middle = (lo + hi) / 2;
  const left = new Float64Array(b.length);
  const right = b.slice();
  const last = b.length - 1;
  for (let i = 0; i <= last; i++) {
    left[i] = right[0] as number;
    for (let j = 0; j < last - i; j++) right[j] = ((right[j] as number) + (right[j + 1] as number)) / 2;
  }
  return [
    { lo, hi: middle, halvings: halvings + 1, b: left },
    { lo: middle, hi, halvings: halvings + 1, b: right },
  ];
}

/**
 * Roots of c[0] + c[1] s + … strictly inside (lo, hi), ascending, where the sign changes. Found by Descartes' rule: the
 * Bernstein coefficients over an interval change sign at least as often as there are roots in it, so an interval without
 * a change has none and one with a single change has exactly one; others are halved.
 */
export function signChanges(c: Float64Array, lo: number, hi: number): number[] {
  let degree = c.length - 1;
  while (degree > 0 && c[degree] === 0) degree--;
  if (degree === 0) return [];
  if (degree === 1) {
    const root = -(c[0] as number) / (c[1] as number);
    return root > lo && root < hi ? [root] : [];
  }
  if (degree === 2) return quadraticRoots(c[2] as number, c[1] as number, c[0] as number, lo, hi);
  const whole = bernstein(c, degree, lo, hi);
  let noise = 0;
  for (const value of whole) noise = Math.max(noise, NOISE * Math.abs(value));
  const roots: number[] = [];
  const open: Part[] = [{ lo, hi, halvings: 0, b: whole }];
  for (let part = open.pop(); part; part = open.pop()) {
    const { changes, first, last } = signs(part.b, noise);
    if (changes === 0 && first !== 0) continue;
    if (changes === 1) roots.push(bracketedRoot(c, degree, part.lo, part.hi, last > 0));
    else if (first === 0 || part.halvings === MOST_HALVINGS) {
      const before = evaluate(c, 0, degree, part.lo);
      if (before * evaluate(c, 0, degree, part.hi) < 0) roots.push((part.lo + part.hi) / 2);
    } else {
      const [left, right] = halves(part);
      const touches = Math.abs(right.b[0] as number) <= noise;
      if (touches && signs(left.b, noise).last * signs(right.b, noise).first < 0) roots.push(right.lo);
      open.push(right, left);
    }
  }
  return roots.sort((a, b) => a - b);
}
